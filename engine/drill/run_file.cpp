#include "drill/run_file.hpp"

#include "core/hash.hpp"
#include "job/files.hpp"
#include "text/atomic_file.hpp"
#include "text/input_file.hpp"

#include <cereal/archives/portable_binary.hpp>
#include <cereal/types/string.hpp>

#include <algorithm>
#include <sstream>

namespace flapdoor::drill {

namespace {

constexpr std::string_view magic = "FLAPDOOR-RUN\n";
constexpr std::size_t sum_bytes = 8;    // fingerprint of all that stands before it, at the end

/// What cereal meets when a count promises more than the file holds.
struct LyingCount : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Reads one archive out of bytes, and knows how many are left.
class Reader {
public:
    explicit Reader(const std::string& bytes) : stream_(bytes), size_(bytes.size()), archive_(stream_) {}

    template <class T>
    T take()
    {
        T value{};
        archive_(value);
        return value;
    }

    std::string take_text()
    {
        std::string text(count(1), '\0');
        archive_(cereal::binary_data(text.data(), text.size()));
        return text;
    }

    bool is_at_end() { return stream_.peek() == std::istringstream::traits_type::eof(); }

    /// A count of things of at least `bytes_each`; refused when that many cannot follow.
    std::size_t count(std::size_t bytes_each)
    {
        cereal::size_type n = 0;
        archive_(cereal::make_size_tag(n));
        const auto left = size_ - static_cast<std::size_t>(std::max<std::streamoff>(0, stream_.tellg()));
        if (n > left / bytes_each) throw LyingCount("a count of " + std::to_string(n) + " with " + std::to_string(left) + " bytes left");
        return static_cast<std::size_t>(n);
    }

private:
    std::istringstream stream_;
    std::size_t size_;
    cereal::PortableBinaryInputArchive archive_;
};

class Writer {
public:
    Writer() : archive_(stream_) {}

    template <class T>
    void put(T value) { archive_(value); }
    void put_count(std::size_t n) { archive_(cereal::make_size_tag(static_cast<cereal::size_type>(n))); }
    void put_text(const std::string& text)
    {
        put_count(text.size());
        archive_(cereal::binary_data(text.data(), text.size()));
    }
    std::string bytes() const { return stream_.str(); }

private:
    std::ostringstream stream_;
    cereal::PortableBinaryOutputArchive archive_;
};

std::string as_bytes(std::uint64_t value)
{
    std::string bytes(sum_bytes, '\0');
    for (std::size_t i = 0; i < sum_bytes; ++i) bytes[i] = static_cast<char>((value >> (8 * i)) & 0xFFU);
    return bytes;
}

void put_input(Writer& writer, const InputText& input)
{
    writer.put_text(input.name);
    writer.put_text(input.text);
    writer.put(input.hash);
}

InputText take_input(Reader& reader)
{
    InputText input;
    input.name = reader.take_text();
    input.text = reader.take_text();
    input.hash = reader.take<std::uint64_t>();
    return input;
}

auto damaged(const std::string& name, std::string found) { return failed(Problem{Place{name, 0, 0}, "a whole run file of this program", std::move(found)}); }

}

InputText input_text(std::string name, std::string text)
{
    const std::uint64_t hash = fingerprint_of(text);
    return {std::move(name), std::move(text), hash};
}

Result<void> save_run(const RunFile& file, const std::string& path)
{
    Writer writer;
    writer.put(RunFile::format_version);
    put_input(writer, file.scenario);
    put_input(writer, file.plan);
    put_input(writer, file.book);
    writer.put(file.seed);
    writer.put_count(file.hashes.size());
    for (const StepHash& step : file.hashes) {
        writer.put(static_cast<std::int32_t>(step.card));
        writer.put(step.hash);
    }
    writer.put_text(file.claimed_marks);
    writer.put(file.outside_lead);
    writer.put(file.released_lead);
    const std::string body = std::string(magic) + writer.bytes();
    return text::save_atomically(path, body + as_bytes(fingerprint_of(body)));
}

Result<RunFile> parse_run(const std::string& bytes, const std::string& name)
{
    if (bytes.compare(0, magic.size(), magic) != 0) return damaged(name, "a file that does not begin like one");
    if (bytes.size() < magic.size() + sum_bytes) return damaged(name, "one cut short");
    const std::string body = bytes.substr(0, bytes.size() - sum_bytes);
    try {
        Reader reader(body.substr(magic.size()));
        if (const auto version = reader.take<std::uint32_t>(); version != RunFile::format_version)
            return failed(Problem{Place{name, 0, 0}, "run file format " + std::to_string(RunFile::format_version), "format " + std::to_string(version)});
        RunFile file;
        file.scenario = take_input(reader);
        file.plan = take_input(reader);
        file.book = take_input(reader);
        file.seed = reader.take<std::uint64_t>();
        file.hashes.resize(reader.count(12));
        for (StepHash& step : file.hashes) {
            step.card = reader.take<std::int32_t>();
            step.hash = reader.take<std::uint64_t>();
        }
        file.claimed_marks = reader.take_text();
        file.outside_lead = reader.take<std::int64_t>();
        file.released_lead = reader.take<std::int64_t>();
        if (bytes.substr(body.size()) != as_bytes(fingerprint_of(body))) return damaged(name, "one whose checksum does not fit: it was changed or damaged");
        if (!reader.is_at_end()) return damaged(name, "one with something behind its end");
        return file;
    }
    catch (const LyingCount& e) {
        return damaged(name, e.what());
    }
    catch (const cereal::Exception&) {
        return damaged(name, "one cut short");
    }
}

Result<RunFile> load_run(const std::string& path)
{
    const Result<std::string> bytes = text::read_file(path);
    if (!bytes) return failed(bytes.error());
    return parse_run(*bytes, path);
}

Result<Replay> replay(const RunFile& file, unsigned threads)
{
    for (const InputText* input : {&file.scenario, &file.plan, &file.book})
        if (fingerprint_of(input->text) != input->hash) return failed(Problem{Place{input->name, 0, 0}, "the text the run was made from", "one with another hash"});
    const Result<job::Scenario> scenario = job::read_scenario(file.scenario.text, file.scenario.name);
    if (!scenario) return failed(scenario.error());
    const Result<job::WorkPlan> plan = job::read_plan(file.plan.text, file.plan.name, *scenario);
    if (!plan) return failed(plan.error());
    RunOptions options;
    options.seed = file.seed;
    options.threads = threads;
    Replay result{carry_out(*scenario, *plan, options), std::nullopt};
    const std::vector<StepHash>& now = result.run.hashes;
    for (std::size_t i = 0; i < std::max(now.size(), file.hashes.size()); ++i) {
        if (i < now.size() && i < file.hashes.size() && now[i] == file.hashes[i]) continue;
        result.first_difference = static_cast<int>(i);
        break;
    }
    return result;
}

}
