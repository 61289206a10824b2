#include "window/class_room/class_question.hpp"

#include "rules/evaluate.hpp"
#include "rules/next_cards.hpp"
#include "rules/run_task.hpp"
#include "text/language.hpp"
#include "text/sentence.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace flapdoor::window {

namespace {

using text::sentence;
using text::to_say;

constexpr std::size_t most_wrong = 2;

/// Parameters that say what a card is about.
constexpr std::array<std::string_view, 10> thing_names{"opening", "at", "object", "component", "sill", "counter", "bag", "target", "section", "item"};

bool is_about_the_same(const job::LogEntry& a, const job::LogEntry& b)
{
    return a.step == b.step && std::all_of(thing_names.begin(), thing_names.end(), [&](std::string_view name) {
               return job::parameter(a, std::string(name)) == job::parameter(b, std::string(name));
           });
}

/// Entries of the careful run that the played one has done, or is doing, by then.
std::vector<bool> done_by(const job::RunLog& careful, const job::RunLog& played, Time now)
{
    std::vector<bool> is_done(careful.entries.size(), false);
    for (const job::LogEntry& entry : played.entries) {
        if (entry.start > now || entry.outcome == job::Outcome::refused) continue;
        for (std::size_t i = 0; i < careful.entries.size(); ++i)
            if (!is_done[i] && is_about_the_same(careful.entries[i], entry)) {
                is_done[i] = true;
                break;
            }
    }
    return is_done;
}

text::Sentence title_of_entry(const Story& story, std::size_t entry)
{
    const std::string& title = story.report.steps[entry].title;
    const text::Sentence& detail = story.words[entry].detail;
    return detail.empty() ? text::Sentence(title) : sentence("{}: {}", title, detail);
}

}

int ClassQuestion::votes() const
{
    int sum = 0;
    for (const ClassAnswer& answer : answers) sum += answer.votes;
    return sum;
}

int ClassQuestion::first_votes() const
{
    int sum = 0;
    for (const ClassAnswer& answer : answers) sum += answer.first_votes;
    return sum;
}

void ClassQuestion::vote_again()
{
    for (ClassAnswer& answer : answers) answer.first_votes = std::exchange(answer.votes, 0);
    is_second_vote = true;
}

std::optional<ClassQuestion> what_next(const Story& played, const Story& careful, Time now)
{
    const job::RunLog& log = careful.log;
    const rules::RunTask task = rules::run_task(careful.inputs.book, rules::evaluate(careful.inputs.book, careful.inputs.scenario, log), log);
    const Result<rules::OrderBook> book = rules::OrderBook::build(task.task);
    if (!book) return std::nullopt;
    const std::vector<bool> is_entry_done = done_by(log, played.log, now);
    std::vector<bool> is_done(task.entry_of.size(), true); // what the careful run lacks hinders nothing
    std::vector<int> card_of(log.entries.size(), -1);
    for (std::size_t c = 0; c < task.entry_of.size(); ++c) {
        if (task.entry_of[c] < 0) continue;
        const auto entry = static_cast<std::size_t>(task.entry_of[c]);
        card_of[entry] = static_cast<int>(c);
        is_done[c] = is_entry_done[entry];
    }
    ClassQuestion question;
    question.text = to_say("What may come next?");
    question.asked_at = now;
    std::vector<std::string> kinds;
    std::size_t right = 0, wrong = 0;
    for (std::size_t entry = 0; entry < log.entries.size(); ++entry) {
        if (is_entry_done[entry] || card_of[entry] < 0 || std::find(kinds.begin(), kinds.end(), log.entries[entry].step) != kinds.end()) continue;
        const std::optional<rules::Hindrance> hindered = rules::hindrance(*book, is_done, card_of[entry]);
        if (hindered ? wrong == most_wrong : right == most_wrong) continue;
        ClassAnswer answer{log.entries[entry].step + "-" + std::to_string(entry), title_of_entry(careful, entry), {}, !hindered, 0};
        if (!hindered) answer.reason = to_say("The rule book wants nothing else before it.");
        else {
            const int before = task.entry_of[static_cast<std::size_t>(hindered->before)];
            const text::Sentence first = before >= 0 ? title_of_entry(careful, static_cast<std::size_t>(before)) : text::Sentence(to_say("another card"));
            answer.reason = hindered->rule >= 0 ? sentence("First: {}. The rule: {}.", first, book->rule(hindered->rule).text) : sentence("First: {}.", first);
        }
        ++(hindered ? wrong : right);
        kinds.push_back(log.entries[entry].step);
        question.answers.push_back(std::move(answer));
    }
    if (question.answers.empty()) return std::nullopt;
    // By title, so that the place of an answer tells nothing; in one order in every language.
    std::stable_sort(question.answers.begin(), question.answers.end(), [](const ClassAnswer& a, const ClassAnswer& b) { return a.label.english() < b.label.english(); });
    return question;
}

}
