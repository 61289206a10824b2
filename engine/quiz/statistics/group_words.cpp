#include "quiz/statistics/findings.hpp"
#include "quiz/statistics/group_report.hpp"
#include "quiz/statistics/moments.hpp"
#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::quiz {

using text::say;
using text::say_number;
using text::say_with;
using text::show_number;
using text::show_percent;

namespace {

constexpr double wanted_reliability = 0.80;
constexpr std::size_t most_answers_listed = 6;

std::string two_digits(double value) { return fmt::format("{:.2f}", value); }
std::string with_sign(const std::optional<double>& value) { return value ? fmt::format("{:+.2f}", *value) : std::string("-"); }

/// A question by its number and its words.
std::string label_of(const GroupReport& report, const QuestionStatistics& question)
{
    const AskedQuestion& asked = report.asked[question.question];
    return fmt::format("{}. {}", question.question + 1, asked.title.empty() ? asked.id : asked.title);
}

/// The same by its short name, where room is short.
std::string short_label_of(const GroupReport& report, const QuestionStatistics& question)
{
    return fmt::format("{}. {}", question.question + 1, report.asked[question.question].id);
}

std::string short_word(Finding finding)
{
    switch (finding) {
        case Finding::check_the_key:
        case Finding::strong_choose_another: return std::string(say("check the key"));
        case Finding::ambiguous_answer: return std::string(say("ambiguous"));
        case Finding::idle_answer: return std::string(say("idle answer"));
        case Finding::says_little: return std::string(say("says little"));
    }
    return {};
}

/// Each word once.
std::string short_words(const std::vector<Found>& findings)
{
    std::vector<std::string> words;
    for (const Found& found : findings)
        if (std::string word = short_word(found.what); std::find(words.begin(), words.end(), word) == words.end()) words.push_back(std::move(word));
    return fmt::format("{}", fmt::join(words, ", "));
}

std::string of_most(const PaperStatistics& paper, double points)
{
    return paper.most == 1.0 ? show_percent(points) : say_with("{} of {} points", show_number(points, 3), show_number(paper.most, 4));
}

void tell_reliability(const GroupReport& report, const Reliability& it, std::vector<std::string>& lines)
{
    const std::string name = it.is_kr20 ? "KR-20" : std::string(say("Cronbach's alpha"));
    if (it.interval) lines.push_back(say_with("Reliability ({}) {}; 95 % interval {} to {}.", name, two_digits(it.alpha), two_digits(it.interval->low), two_digits(it.interval->high)));
    else lines.push_back(say_with("Reliability ({}) {}.", name, two_digits(it.alpha)));
    // Two scores of one person differ by sqrt(2) SEM; 1.96 of that is 95 %.
    const double chance = 1.96 * std::sqrt(2.0) * it.error_of_measurement;
    lines.push_back(say_with("A score is uncertain by about {0} either way (standard error of measurement); a difference of less than {1} between two people may be chance.",
                             of_most(report.paper, it.error_of_measurement), of_most(report.paper, chance)));
    const auto questions = static_cast<double>(report.asked.size());
    if (it.alpha <= 0.0) lines.emplace_back(say("The questions do not hang together: who is good at one is no better at the others."));
    else if (it.alpha < wanted_reliability)
        lines.push_back(say_with("About {} questions like these would be needed for a reliability of {}.", show_number(std::ceil(questions * lengthening_for(it.alpha, wanted_reliability)), 4),
                                 two_digits(wanted_reliability)));
}

}

std::vector<std::string> paper_lines(const GroupReport& report)
{
    const PaperStatistics& paper = report.paper;
    std::vector<std::string> lines;
    lines.push_back(fmt::format("{}, {}.", say_number("{} person", "{} people", paper.people), say_number("{} question", "{} questions", report.asked.size())));
    if (paper.deviation) lines.push_back(say_with("Mean {0}, standard deviation {1}.", of_most(paper, paper.mean), of_most(paper, *paper.deviation)));
    else lines.push_back(say_with("Score {}.", of_most(paper, paper.mean)));
    if (report.shows_figures()) {
        if (paper.reliability) tell_reliability(report, *paper.reliability, lines);
        else lines.emplace_back(say("No reliability: it needs two people with different scores who had the same two questions or more."));
    }
    return lines;
}

std::vector<std::string> early_lines(const GroupReport& report)
{
    if (!report.is_early()) return {};
    const std::size_t people = report.paper.people;
    std::vector<std::string> lines;
    // At p = 1/2 a share is least certain: its standard error is 1/2 sqrt(N).
    lines.push_back(say_with("With {0} people a share of right answers is uncertain by up to {1} either way (one standard error).", people,
                             show_percent(0.5 / std::sqrt(static_cast<double>(people)))));
    if (people > 1)
        lines.push_back(say_with("A correlation is uncertain by up to {} either way.", two_digits(1.0 / std::sqrt(static_cast<double>(people - 1)))));
    lines.push_back(report.shows_early ? say_with("Upper less lower, correlations and reliability mean little below {} people: early figures.", enough_people)
                                       : say_with("Upper less lower, correlations and reliability mean little below {} people and are not shown.", enough_people));
    lines.push_back(say_with("Answers that nobody chooses are told from {} people on.", enough_people));
    lines.emplace_back(say("What is listed as worth a look is a reason to read the question again, no more."));
    return lines;
}

std::vector<std::string> finding_lines(const GroupReport& report)
{
    std::vector<std::string> lines;
    for (const QuestionStatistics& question : report.questions)
        for (const Found& found : question.findings) lines.push_back(fmt::format("{} - {}", label_of(report, question), tell(found, question)));
    return lines;
}

text::TextTable question_table(const GroupReport& report)
{
    using text::Align;
    const bool has_reliability = report.shows_figures() && report.paper.reliability;
    text::TextTable table;
    table.columns = {{std::string(say("Question"))}, {std::string(say("People")), Align::right}, {std::string(say("Right")), Align::right}, {"+-", Align::right}};
    if (report.shows_figures()) {
        table.columns.push_back({"D", Align::right});
        table.columns.push_back({std::string(say("r rest")), Align::right});
    }
    if (has_reliability) table.columns.push_back({std::string(say("Without")), Align::right});
    table.columns.push_back({std::string(say("Worth a look"))});
    for (const QuestionStatistics& question : report.questions) {
        std::vector<std::string> row{short_label_of(report, question), std::to_string(question.people), fmt::format("{:.0f} %", 100.0 * question.difficulty), fmt::format("{:.0f}", 100.0 * question.difficulty_error)};
        if (report.shows_figures()) {
            row.push_back(with_sign(question.upper_lower));
            row.push_back(with_sign(question.with_rest));
        }
        if (has_reliability) {
            const auto& without = report.paper.reliability->alpha_without[question.question];
            row.push_back(without ? two_digits(*without) : "-");
        }
        row.push_back(short_words(question.findings));
        table.rows.push_back(std::move(row));
    }
    return table;
}

text::TextTable answers_table(const GroupReport& report)
{
    using text::Align;
    text::TextTable table;
    table.columns = {{std::string(say("Answer"))}, {std::string(say("People")), Align::right}, {std::string(say("Share")), Align::right}, {std::string(say("Upper / middle / lower")), Align::right}};
    if (report.shows_figures()) table.columns.push_back({std::string(say("r rest")), Align::right});
    for (const QuestionStatistics& question : report.questions) {
        table.rows.push_back({label_of(report, question)});
        const std::size_t offered = report.asked[question.question].offered.size();
        std::size_t left_out = 0;
        for (std::size_t i = 0; i < question.answers.size(); ++i) {
            const AnswerShare& answer = question.answers[i];
            if (i >= offered + most_answers_listed && !answer.id.empty()) {
                left_out += 1;
                continue;
            }
            const std::string words = answer.id.empty() ? std::string(say("left blank")) : text::printable(answer.text.empty() ? answer.id : answer.text);
            std::vector<std::string> row{fmt::format("  {} {}", answer.is_key ? "*" : "-", words), std::to_string(answer.people()), fmt::format("{:.0f} %", 100.0 * answer.share),
                                         fmt::format("{} / {} / {}", answer.upper, answer.middle, answer.lower)};
            if (report.shows_figures()) row.push_back(with_sign(answer.with_rest));
            table.rows.push_back(std::move(row));
        }
        if (left_out > 0) table.rows.push_back({"  " + say_number("- {} other answer", "- {} other answers", left_out)});
    }
    return table;
}

std::vector<std::string> legend_lines(const GroupReport& report)
{
    std::vector<std::string> lines;
    lines.emplace_back(say("Right: mean share of the points; +-: its standard error in percent."));
    if (report.shows_figures()) {
        lines.emplace_back(say("D: share right in the upper group less that in the lower; from 0.40 very good, 0.30 good, 0.20 marginal, below that to be revised (rules of thumb)."));
        lines.emplace_back(say("r rest: correlation with the points in the other questions; below zero, look at the key."));
        if (report.paper.reliability) lines.emplace_back(say("Without: reliability of the paper without this question; where it is higher, the question does harm."));
    }
    lines.emplace_back(say("Upper and lower are the 27 % with the most and the fewest points; of equals the one whose name comes first counts as better. * marks the right answer."));
    return lines;
}

}
