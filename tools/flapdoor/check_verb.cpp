#include "verbs.hpp"

#include "places.hpp"

#include "drill/run_file.hpp"
#include "job/files.hpp"
#include "quiz/bank.hpp"
#include "quiz/blueprint.hpp"
#include "rules/layers.hpp"
#include "rules/lint.hpp"
#include "text/document.hpp"
#include "text/input_file.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <optional>
#include <utility>

namespace flapdoor::command {

using text::say;
using text::say_number;
using text::say_with;

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

std::string shown(const Place& where) { return fmt::format("{}:{}:{}", where.file, where.line, where.column); }

/// Checks rule books one after the other; each that lies on another one is laid on what came before it.
class BookCheck {
public:
    explicit BookCheck(const std::string& scenario) : scenario_(scenario) {}

    Result<std::string> check(const std::string& text, const std::string& path)
    {
        Result<rules::RuleBook> book = rules::read_rule_book(text, path);
        if (!book) return failed(book.error());
        std::string line = say_number("rule book, {} rule", "rule book, {} rules", book->rules.size());
        if (book->is_layer() && !below_) line += say_with("; not laid: name the book \"{}\" before it", book->over->text);
        if (book->is_layer() && below_) {
            Result<rules::RuleBook> both = rules::layered(*below_, *book);
            if (!both) return failed(both.error());
            const std::vector<rules::LayerLine> lines = rules::layer_lines(*below_, *book);
            line += say_number(", laid on \"{1}\": {0} rule in all", ", laid on \"{1}\": {0} rules in all", both->rules.size(), below_->id);
            for (const rules::LayerLine& change : lines) notes_ += fmt::format("  {}: {} {}: {}\n", shown(change.where), say(word_of(change.change)), change.rule, change.what);
            book = std::move(both);
        }
        if (!scenario_.empty()) {
            if (const Result<void> told = tell_idle(*book); !told) return failed(told.error());
        }
        below_ = std::move(*book);
        return line;
    }

    /// What there is to tell besides the line, and no more of it.
    std::string take_notes() { return std::exchange(notes_, {}); }

private:
    Result<void> tell_idle(const rules::RuleBook& book)
    {
        const std::string path = scenario_path(scenario_);
        const Result<std::string> text = text::read_file(path);
        if (!text) return failed(text.error());
        const Result<job::Scenario> place = job::read_scenario(*text, path);
        if (!place) return failed(place.error());
        for (const rules::Idle& idle : rules::idle_rules(book, *place)) notes_ += fmt::format("  {}: {}\n", shown(idle.where), say_with("{} can never apply in {}: {}", idle.rule, place->id, idle.why));
        return {};
    }

    std::string scenario_;
    std::optional<rules::RuleBook> below_;
    std::string notes_;
};

/// How many questions a bank has, and how many of its texts nobody has put into Spanish.
std::string bank_line(const quiz::Bank& bank)
{
    std::string line = say_number("question bank, {} question", "question bank, {} questions", bank.questions.size());
    const std::vector<Place> places = quiz::without_spanish(bank);
    if (!places.empty()) line += say_with("; {} without Spanish, the first at {}", places.size(), shown(places.front()));
    return line;
}

/// What a file is and that it is in order, in one line.
Result<std::string> check_one(const std::string& path, const std::string& scenario, BookCheck& books)
{
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    if (text->rfind("FLAPDOOR-RUN", 0) == 0) return as_line(drill::parse_run(*text, path), std::string(say("run file")));
    const Result<text::Node> root = text::parse_document(*text, path);
    if (!root) return failed(root.error());
    if (has_key(*root, "rule") || has_key(*root, "change") || has_key(*root, "over")) return books.check(*text, path);
    if (has_key(*root, "card")) {
        const Result<job::Scenario> place = scenario_for(path, scenario);
        if (!place) return failed(place.error());
        const Result<job::WorkPlan> plan = job::read_plan(*text, path, *place);
        if (!plan) return failed(plan.error());
        return say_number("work plan, {} card for {}", "work plan, {} cards for {}", plan->cards.size(), plan->scenario);
    }
    if (has_key(*root, "question")) return quiz::read_bank(*text, path, quiz::scenarios_in(scenario_folder())).map(bank_line);
    if (has_key(*root, "part")) return as_line(quiz::load_blueprint(path, quiz::scenarios_in(scenario_folder())), std::string(say("blueprint of papers")));
    return as_line(job::read_scenario(*text, path), std::string(say("scenario")));
}

}

int check_files(const std::vector<std::string>& files, const std::string& scenario)
{
    int result = fine;
    BookCheck books(scenario);
    for (const std::string& named : files) {
        const std::string file = paper_path(bank_path(book_path(named)));
        const Result<std::string> checked = check_one(file, scenario, books);
        if (checked) fmt::print("{}\n{}", say_with("{}: in order ({})", file, *checked), books.take_notes());
        else {
            tell(checked.error());
            result = bad_file;
        }
    }
    return result;
}

}
