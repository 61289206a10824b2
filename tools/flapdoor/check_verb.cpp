#include "verbs.hpp"

#include "places.hpp"

#include "drill/run_file.hpp"
#include "job/files.hpp"
#include "rules/lint.hpp"
#include "text/document.hpp"
#include "text/input_file.hpp"

#include <fmt/format.h>

#include <filesystem>

namespace flapdoor::command {

namespace {

bool has_key(const text::Node& root, std::string_view key)
{
    const auto* table = std::get_if<text::Table>(&root.value);
    return table != nullptr && table->find(key) != nullptr;
}

/// The scenario a plan is checked against: the one named, or scenario.toml in the plan's folder.
Result<job::Scenario> scenario_for(const std::string& plan, const std::string& named)
{
    const std::string path = named.empty() ? (std::filesystem::path(plan).parent_path() / "scenario.toml").string() : scenario_path(named);
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    return job::read_scenario(*text, path);
}

template <class T>
Result<std::string> as_line(const Result<T>& result, std::string line)
{
    if (!result) return failed(result.error());
    return line;
}

/// What a file is and that it is in order, in one line.
Result<std::string> check_one(const std::string& path, const std::string& scenario)
{
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    if (text->rfind("FLAPDOOR-RUN", 0) == 0) return as_line(drill::parse_run(*text, path), "run file");
    const Result<text::Node> root = text::parse_document(*text, path);
    if (!root) return failed(root.error());
    if (has_key(*root, "rule")) {
        const Result<rules::RuleBook> book = rules::read_rule_book(*text, path);
        if (!book) return failed(book.error());
        return fmt::format("rule book, {} rules", book->rules.size());
    }
    if (has_key(*root, "card")) {
        const Result<job::Scenario> place = scenario_for(path, scenario);
        if (!place) return failed(place.error());
        const Result<job::WorkPlan> plan = job::read_plan(*text, path, *place);
        if (!plan) return failed(plan.error());
        return fmt::format("work plan, {} cards for {}", plan->cards.size(), plan->scenario);
    }
    return as_line(job::read_scenario(*text, path), "scenario");
}

}

int check_files(const std::vector<std::string>& files, const std::string& scenario)
{
    int result = fine;
    for (const std::string& file : files) {
        const Result<std::string> checked = check_one(file, scenario);
        if (checked) fmt::print("{}: in order ({})\n", file, *checked);
        else {
            tell(checked.error());
            result = bad_file;
        }
    }
    return result;
}

}
