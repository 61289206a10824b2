#include "short_plan.hpp"

#include "core/hash.hpp"
#include "core/philox.hpp"
#include "drill/run_file.hpp"
#include "text/input_file.hpp"

#include <sys/resource.h>
#include <unistd.h>

#include <filesystem>
#include <string>

namespace flapdoor::drill {

namespace {

constexpr std::size_t magic_bytes = 13;     // "FLAPDOOR-RUN" and a line end
constexpr std::size_t version_at = magic_bytes + 1;     // behind the byte that tells the byte order
constexpr std::size_t first_count_at = version_at + 4;  // length of the scenario's file name
constexpr std::size_t sum_bytes = 8;

/// A file of the short run, kept by its own folder, which goes when the test is over.
struct Kept {
    std::filesystem::path folder;
    RunFile file;

    Kept() : folder(std::filesystem::temp_directory_path() / ("flapdoor-run-file-" + std::to_string(getpid())))
    {
        std::filesystem::create_directories(folder);
        const Run run = run_short(11);
        file.scenario = input_text("scenario.toml", job::shipped_text("scenario"));
        file.plan = input_text("short.toml", short_plan_text);
        file.book = input_text("book.toml", "# no rules\n");
        file.seed = 11;
        file.hashes = run.hashes;
        file.claimed_marks = "10 wanted, 0 quarters lost";
        file.outside_lead = run.site.ledger.on(dust::Side::outside).lead.count;
        file.released_lead = run.site.ledger.released().lead.count;
    }
    ~Kept()
    {
        std::error_code ignored;
        std::filesystem::remove_all(folder, ignored);
    }
    Kept(const Kept&) = delete;
    Kept& operator=(const Kept&) = delete;

    std::string path() const { return (folder / "short.run").string(); }
    std::string bytes() const
    {
        job::sound(save_run(file, path()).map([] { return true; }));
        return job::sound(text::read_file(path()));
    }
};

/// The checksum at the end made to fit again, as somebody would who changes a file on purpose.
std::string summed(std::string bytes)
{
    bytes.resize(bytes.size() - sum_bytes);
    const std::uint64_t sum = fingerprint_of(bytes);
    for (std::size_t i = 0; i < sum_bytes; ++i) bytes += static_cast<char>((sum >> (8 * i)) & 0xFFU);
    return bytes;
}

std::string with_number(std::string bytes, std::size_t at, std::uint64_t number, std::size_t width)
{
    for (std::size_t i = 0; i < width; ++i) bytes[at + i] = static_cast<char>((number >> (8 * i)) & 0xFFU);
    return bytes;
}

std::string problem_of(const std::string& bytes) { return job::told(job::wrong(parse_run(bytes, "x.run"))); }

const std::string whole = "x.run: expected a whole run file of this program, found ";

long peak_kilobytes()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

}

TEST_CASE("a run saved and loaded is the same run", "[run-file]")
{
    const Kept kept;
    job::sound(save_run(kept.file, kept.path()).map([] { return true; }));
    const RunFile back = job::sound(load_run(kept.path()));
    CHECK(back.scenario.name == "scenario.toml");
    CHECK(back.scenario.text == kept.file.scenario.text);
    CHECK(back.scenario.hash == kept.file.scenario.hash);
    CHECK(back.plan.text == short_plan_text);
    CHECK(back.book.text == "# no rules\n");
    CHECK(back.seed == 11);
    CHECK(back.hashes == kept.file.hashes);
    CHECK(back.claimed_marks == kept.file.claimed_marks);
    CHECK(back.outside_lead == kept.file.outside_lead);
    CHECK(back.released_lead == kept.file.released_lead);
    CHECK(back.released_lead > 0);
}

TEST_CASE("a file with any byte changed is refused in plain words", "[run-file]")
{
    const Kept kept;
    const std::string sound = kept.bytes();
    const Luck luck{3, Stream::parameter};
    std::size_t tried = 0;
    // Every byte of the head, of the counts and numbers behind the texts and of the sum; one in seventeen inside the texts.
    for (std::size_t at = 0; at < sound.size(); at += (at < 400 || at + 800 > sound.size()) ? 1 : 17) {
        std::string bytes = sound;
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U + luck.draw(at, 0)[0] % 255U));
        const Problems problems = job::wrong(parse_run(bytes, "x.run"));
        INFO(at);
        CHECK(problems.size() == 1);
        CHECK(problems.front().where.file == "x.run");
        CHECK_FALSE(problems.front().found.empty());
        ++tried;
    }
    CHECK(tried > 1200);
}

TEST_CASE("a file cut off anywhere is refused in plain words", "[run-file]")
{
    const Kept kept;
    const std::string sound = kept.bytes();
    for (std::size_t length = 0; length < sound.size(); length += (length < 64 || length + 300 > sound.size()) ? 1 : 97) {
        INFO(length);
        CHECK(problem_of(sound.substr(0, length)).rfind(whole, 0) == 0);
        if (length > magic_bytes + sum_bytes) CHECK(problem_of(summed(sound.substr(0, length))).rfind(whole, 0) == 0);    // also with a sum that fits
    }
    CHECK(problem_of("") == whole + "a file that does not begin like one\n");
    CHECK(problem_of("PNG\r\n and then something") == whole + "a file that does not begin like one\n");
    CHECK(problem_of(sound.substr(0, magic_bytes + 3)) == whole + "one cut short\n");
}

TEST_CASE("a count that promises more than the file holds is refused, and no memory is taken for it", "[run-file]")
{
    const Kept kept;
    const std::string sound = kept.bytes();
    const auto text_bytes = [](const InputText& input) { return 8 + input.name.size() + 8 + input.text.size() + 8; };
    const std::size_t scenario_text_at = first_count_at + 8 + kept.file.scenario.name.size();
    const std::size_t hashes_at = first_count_at + text_bytes(kept.file.scenario) + text_bytes(kept.file.plan) + text_bytes(kept.file.book) + 8;
    const std::size_t claim_at = hashes_at + 8 + kept.file.hashes.size() * 12;
    const long before = peak_kilobytes();
    for (const std::size_t at : {first_count_at, scenario_text_at, hashes_at, claim_at}) {
        for (const std::uint64_t lie : {std::uint64_t{1} << 60, ~std::uint64_t{0}, std::uint64_t{1} << 31, std::uint64_t{sound.size()}}) {
            INFO("at " << at << ": " << lie);
            const std::string lying = with_number(sound, at, lie, 8);
            CHECK(problem_of(lying).find("a count of " + std::to_string(lie) + " with ") != std::string::npos);
            CHECK(problem_of(summed(lying)).find("a count of " + std::to_string(lie) + " with ") != std::string::npos);
        }
    }
    // As many hashes as there are bytes left would fit only if each were one byte long.
    CHECK(problem_of(summed(with_number(sound, hashes_at, 16, 8))).find("a count of 16 with ") != std::string::npos);
    CHECK(peak_kilobytes() - before < 64 * 1024);
}

TEST_CASE("a file of another format is told by its number", "[run-file]")
{
    const Kept kept;
    const std::string sound = kept.bytes();
    for (const std::uint64_t version : {0U, 2U, 77U})
        CHECK(problem_of(summed(with_number(sound, version_at, version, 4))) == "x.run: expected run file format 1, found format " + std::to_string(version) + "\n");
}

TEST_CASE("something behind the end of a file is noticed", "[run-file]")
{
    const Kept kept;
    const std::string sound = kept.bytes();
    CHECK(problem_of(summed(sound + "more")) == whole + "one with something behind its end\n");
    CHECK(problem_of(sound + "more") != "");
}

TEST_CASE("a missing file and a folder are problems, not crashes", "[run-file]")
{
    const Kept kept;
    CHECK_FALSE(load_run((kept.folder / "nothing.run").string()).has_value());
    CHECK_FALSE(load_run(kept.folder.string()).has_value());
}

TEST_CASE("replaying a kept run finds it the same, with any number of threads", "[run-file]")
{
    const Kept kept;
    for (const unsigned threads : {1U, 2U}) {
        const Replay again = job::sound(replay(kept.file, threads));
        CHECK(again.first_difference == std::nullopt);
        CHECK(again.run.hashes == kept.file.hashes);
        CHECK(again.run.site.ledger.on(dust::Side::outside).lead.count == kept.file.outside_lead);
    }
}

TEST_CASE("replaying names the first card that differs from the file", "[run-file]")
{
    Kept kept;
    const std::vector<StepHash> sound = kept.file.hashes;
    for (const std::size_t card : {std::size_t{0}, std::size_t{4}, std::size_t{9}}) {
        kept.file.hashes = sound;
        kept.file.hashes[card].hash ^= 1U;
        CHECK(job::sound(replay(kept.file)).first_difference == static_cast<int>(card));
    }
    kept.file.hashes = sound;
    kept.file.hashes.pop_back();
    CHECK(job::sound(replay(kept.file)).first_difference == 9);
    kept.file.hashes = sound;
    kept.file.hashes.push_back({10, 1});
    CHECK(job::sound(replay(kept.file)).first_difference == 10);
    kept.file.hashes = sound;
    kept.file.seed = 12;
    CHECK(job::sound(replay(kept.file)).first_difference == 0);
}

TEST_CASE("a plan changed after the run does not give the run's hashes", "[run-file]")
{
    Kept kept;
    const std::string milder = job::with(short_plan_text, "is-misted = false", "is-misted = true");
    kept.file.plan.text = milder;
    CHECK(job::told(job::wrong(replay(kept.file))) == "short.toml: expected the text the run was made from, found one with another hash\n");
    kept.file.plan = input_text("short.toml", milder);      // hash and all
    const Replay again = job::sound(replay(kept.file));
    CHECK(again.first_difference == 2);
    CHECK(again.run.site.ledger.released().lead.count != kept.file.released_lead);
}

TEST_CASE("kept texts that do not read are told with their places", "[run-file]")
{
    Kept kept;
    kept.file.plan = input_text("short.toml", job::with(short_plan_text, "casing-1", "casing-9"));
    CHECK(job::told(job::wrong(replay(kept.file))).find("short.toml:7:") == 0);
    kept.file.scenario = input_text("scenario.toml", "format = 1\n");
    CHECK(job::told(job::wrong(replay(kept.file))).find("scenario.toml:1:1: expected the key") == 0);
}

}
