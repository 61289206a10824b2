#include "debrief/wording.hpp"
#include "job/card_words.hpp"
#include "job/step.hpp"
#include "rules/layers.hpp"
#include "rules/rule.hpp"
#include "rules/vocabulary.hpp"
#include "text/document.hpp"
#include "text/field_table.hpp"
#include "text/input_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>

// Prints, as a catalog without translations, what people read and what stands in data instead of behind a say(): step cards,
// words of the vocabulary, scenarios and rule books. tools/collect-words puts it together with what stands in the code.
//
//   flapdoor_words SCENARIOS
//
// Exit codes: 0 done, 3 a file could not be read.

using namespace flapdoor;

namespace {

namespace fs = std::filesystem;

/// Keys of scenarios, plans and rule books whose values are read by people. Other texts are ids, words of a
/// format or figures. Question banks hold both languages side by side.
constexpr std::array read_by_people{"title", "job", "says", "reason", "harm", "why", "edition"};

std::string quoted(std::string_view text)
{
    std::string out = "\"";
    for (const char c : text) {
        if (c == '\n') out += "\\n";
        else if (c == '"' || c == '\\') out += std::string{'\\', c};
        else out += c;
    }
    return out + '"';
}

void print(std::string_view where, std::string_view text)
{
    if (std::none_of(text.begin(), text.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); })) return;
    fmt::print("#: {}\nmsgid {}\nmsgstr \"\"\n\n", where, quoted(text));
}

template <class E>
void print_words(std::string_view where)
{
    for (const std::string_view word : Words<E>::words) print(where, word);
}

void print_cards()
{
    text::each_alternative<job::Step>([]<class S>(const S&) {
        const std::string where = fmt::format("engine/job/steps/{}", S::name);
        print(where, S::title);
        print(where, S::needs);
        for (const text::FieldRow& row : text::field_table<S>()) print(where, row.about);
    });
}

void print_vocabulary()
{
    constexpr std::string_view where = "engine/rules/vocabulary.cpp";
    for (const rules::StateWords& state : rules::state_words())
        for (const std::string_view words : {state.held, state.failed}) print(where, words);
    for (const rules::MeasureWords& measure : rules::measure_words()) print(where, measure.title);
    // Names that the site makes for its surfaces.
    for (const std::string_view word : {"floor", "floor sheeting", "sheeting", "runner"}) print("engine/site/build.cpp", word);
    for (const std::string_view side : Words<job::WallSide>::words) print("engine/site/build.cpp", fmt::format("{} wall", side));
    // Parameters and their words, as rules tell them and with spaces as the window does.
    for (const rules::StepWords& step : rules::step_words())
        for (const rules::ParameterWords& parameter : step.parameters) {
            print("engine/job/steps", parameter.name);
            print("engine/job/steps", job::with_spaces(parameter.name));
            for (const std::string_view word : parameter.words) {
                print("engine/job/steps", word);
                print("engine/job/steps", job::with_spaces(word));
            }
        }
    print_words<rules::LayerChange>("engine/rules/layers.hpp");
    print_words<job::Phase>("engine/job/step_kind.hpp");
    print_words<job::OpeningKindOf>("engine/job/building.hpp");
    print_words<job::Role>("engine/job/contents.hpp");
    for (const std::string_view role : Words<job::Role>::words) print("engine/job/contents.hpp", job::with_spaces(role));
    print_words<rules::RuleClass>("engine/rules/rule.hpp");
    print_words<dust::Pathway>("engine/dust/ledger.hpp");
}

/// Parts of a citation that are more than a paragraph: "common practice, no source".
void print_cite(const std::string& cite, const std::string& where)
{
    for (std::size_t from = 0; from < cite.size();) {
        const std::size_t end = std::min(cite.find("; ", from), cite.size());
        const std::string part = cite.substr(from, end - from);
        int letters = 0, longest = 0;
        for (const char c : part) longest = std::max(longest, letters = c >= 'a' && c <= 'z' ? letters + 1 : 0);
        if (longest > 4) print(where, part);    // numerals of paragraphs have at most four
        from = end + 2;
    }
}

/// Every text of a file that people read, wherever it stands.
void print_texts(const text::Node& node, bool is_read, const std::string& where)
{
    if (const auto* text = std::get_if<std::string>(&node.value); text && is_read) print(where, *text);
    if (const auto* list = std::get_if<text::Array>(&node.value))
        for (const text::Node& one : *list) print_texts(one, is_read, where);
    if (const auto* table = std::get_if<text::Table>(&node.value))
        for (const text::Entry& entry : table->entries) {
            if (const auto* cite = std::get_if<std::string>(&entry.value.value); cite && entry.key == "cite") print_cite(*cite, where);
            print_texts(entry.value, std::find(read_by_people.begin(), read_by_people.end(), entry.key) != read_by_people.end(), where);
        }
}

bool print_file(const fs::path& path, const fs::path& root)
{
    const Result<std::string> text = text::read_file(path.string());
    const Result<text::Node> node = text ? text::parse_document(*text, path.string()) : Result<text::Node>(failed(text.error()));
    if (node) print_texts(*node, false, fs::relative(path, root.parent_path()).string());
    else
        for (const Problem& problem : node.error()) fmt::print(stderr, "{}\n", describe(problem));
    return node.has_value();
}

}

int main(int count, char** words)
{
    if (count != 2) return fmt::print(stderr, "usage: flapdoor_words SCENARIOS\n"), 2;
    const fs::path root = fs::path(words[1]).lexically_normal();
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(root))
        if (entry.path().extension() == ".toml" && entry.path().parent_path().filename() != "banks") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    fmt::print("msgid \"\"\nmsgstr \"Content-Type: text/plain; charset=UTF-8\\n\"\n\n");
    print_cards();
    print_vocabulary();
    bool is_whole = true;
    for (const fs::path& file : files) is_whole = print_file(file, root) && is_whole;
    return is_whole ? 0 : 3;
}
