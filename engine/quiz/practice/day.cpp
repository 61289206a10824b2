#include "quiz/practice/day.hpp"

#include "text/quote.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

#include <charconv>
#include <chrono>

namespace flapdoor::quiz {

namespace {

using std::chrono::year_month_day;

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = 10 * value + (c - '0');
    }
    return value;
}

}

std::optional<Day> parse_day(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4)), month = digits(text.substr(5, 2)), day = digits(text.substr(8, 2));
    if (!year || !month || !day || *year < 1970 || *year > 2199) return std::nullopt;
    const year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)}, std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return std::nullopt;
    return Day{static_cast<int>(std::chrono::sys_days{date}.time_since_epoch().count())};
}

std::string text_of(Day day)
{
    const year_month_day date{std::chrono::sys_days{std::chrono::days{day.number}}};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

void Day::from_node(const text::Node& node, Day& into, Problems& problems)
{
    const auto* text = std::get_if<std::string>(&node.value);
    const auto day = text ? parse_day(*text) : std::nullopt;
    if (day) into = *day;
    else problems.push_back({node.where, "a date such as \"2026-12-06\"", text ? text::quoted(*text) : "a value that is no text"});
}

text::Node Day::to_node(const Day& day) { return text::leaf_node(text_of(day)); }

}
