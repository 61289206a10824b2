#include "quiz/practice/outlook.hpp"

#include "core/insist.hpp"
#include "quiz/practice/session.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace flapdoor::quiz {

using text::say;
using text::say_number;
using text::say_with;

std::string day_words(Day day, Day today)
{
    const int days = day - today;
    if (days <= 0) return std::string(say("today"));
    if (days == 1) return std::string(say("tomorrow"));
    return say_with("in {} days ({})", days, text_of(day));
}

std::string due_words(const Practice& practice, const Box& box, Day today)
{
    const bool is_after = practice.field_day && *practice.field_day < today;
    if (is_after && !practice.is_refreshed && box.due > today) return "-";
    if (practice.field_day && today < *practice.field_day && box.due >= *practice.field_day) return std::string(say("ready"));
    if (box.due - today > 366) return "-";
    return day_words(box.due, today);
}

std::string right_words(const Mastery& mastery)
{
    if (mastery.of == 0) return "-";
    return say_with("{0} of {1} ({2} to {3} %)", mastery.right, mastery.of, fmt::format("{:.0f}", 100.0 * mastery.interval.low), fmt::format("{:.0f}", 100.0 * mastery.interval.high));
}

std::vector<TopicOutlook> outlooks(const Practice& practice, std::span<const Topic> topics, Day today)
{
    std::vector<TopicOutlook> all;
    for (const Box& box : boxes_of(practice, topics, today)) all.push_back({box, mastery_of(practice.attempts, box.topic)});
    const auto rank = [](const TopicOutlook& one) {
        const double share = one.is_weak() ? static_cast<double>(one.mastery.right) / one.mastery.of : 1.0;
        return std::tuple(share, one.box.due, !is_behind_critical_rule(one.topic()), one.topic());
    };
    std::sort(all.begin(), all.end(), [&](const TopicOutlook& a, const TopicOutlook& b) { return rank(a) < rank(b); });
    return all;
}

std::vector<std::string> plan_lines(const Practice& practice, std::span<const Topic> topics, Day today)
{
    std::vector<std::string> lines;
    if (practice.field_day) {
        const int days = *practice.field_day - today;
        if (days > 0) lines.push_back(say_number("{0} day to the field day ({1}).", "{0} days to the field day ({1}).", static_cast<unsigned long>(days), text_of(*practice.field_day)));
        else if (days == 0) lines.emplace_back(say("The field day is today."));
        else if (practice.is_refreshed) lines.emplace_back(say("The field day is over; what was learned is asked again 30, 90 and 180 days after it."));
        else lines.emplace_back(say("The field day is over. Refreshers after 30, 90 and 180 days can be switched on."));
    }
    const std::vector<SessionDay> sessions = sessions_ahead(practice, topics, today);
    const bool has_today = !sessions.empty() && sessions.front().day == today;
    if (has_today)
        lines.push_back(say_with("Today: {0}, {1}.", say_number("{} question", "{} questions", sessions.front().questions), say_number("{} topic", "{} topics", sessions.front().topics.size())));
    else lines.emplace_back(say("Nothing is due today."));
    if (sessions.size() > (has_today ? 1u : 0u)) {
        std::string days;
        for (const SessionDay& session : sessions)
            if (session.day != today) days += fmt::format("{}{} ({})", days.empty() ? "" : ", ", text_of(session.day), say_number("{} question", "{} questions", session.questions));
        lines.push_back(say_with("If all goes well, then on {}.", days));
    }
    return lines;
}

text::TextTable standing_table(const Practice& practice, std::span<const Topic> topics, Day today)
{
    text::TextTable table{{{std::string(say("Topic"))}, {std::string(say("Standing"))}, {std::string(say("Right of the latest")), text::Align::right}, {std::string(say("Due"))}}, {}};
    for (const Box& box : boxes_of(practice, topics, today)) {
        const Mastery mastery = mastery_of(practice.attempts, box.topic);
        table.rows.push_back({std::string(say(title_of(box.topic))), std::string(say(word_of_standing(mastery.standing))), right_words(mastery), due_words(practice, box, today)});
    }
    return table;
}

std::vector<std::string> standing_legend()
{
    return {std::string(say("Mastered: 19 of 19 first answers right, or 27 of 28, or 34 of 36, and none of the last ten broke a critical rule. On track: with 80 % certainty more than 80 % are right.")),
            std::string(say("In parentheses: between which shares the true one lies with 95 % certainty.")),
            std::string(say("Practice with a program does not replace hands-on training, and certifies nobody."))};
}

std::string practice_sheet(const Practice& practice, std::span<const Topic> topics, Day today, std::size_t width)
{
    insist(width >= 60, "a sheet on a terminal needs 60 columns");
    std::string out;
    for (const std::string& line : plan_lines(practice, topics, today)) out += text::paragraph(line, width);
    out += "\n" + text::lay_out(standing_table(practice, topics, today), width) + "\n";
    for (const std::string& line : standing_legend()) out += text::paragraph(line, width);
    return out;
}

}
