#include "text/unit_scanner.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

namespace flapdoor::text {

std::string plain(std::string_view text)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 13> signs{{
        {"\u00B5", "u"}, {"\u03BC", "u"}, {"\u00B2", "2"}, {"\u00B3", "3"}, {"\u00B0", ""}, {"\u00A0", " "}, {"\u202F", " "},
        {"\u2212", "-"}, {"\u2032", "'"}, {"\u2033", "\""}, {"^2", "2"}, {"^3", "3"}, {"\t", " "}}};
    std::string out;
    while (!text.empty()) {
        const auto sign = std::find_if(signs.begin(), signs.end(), [&](const auto& s) { return text.starts_with(s.first); });
        if (sign != signs.end()) {
            out += sign->second;
            text.remove_prefix(sign->first.size());
            continue;
        }
        out += text.front();
        text.remove_prefix(1);
    }
    return out;
}

bool UnitScanner::take(char c)
{
    if (!rest_.starts_with(c)) return false;
    rest_.remove_prefix(1);
    return true;
}

void UnitScanner::skip_spaces()
{
    while (take(' ')) {}
}

std::optional<double> UnitScanner::take_number()
{
    const std::string_view before = rest_;
    const std::optional<double> number = take_decimal();
    if (!number) return std::nullopt;
    const std::string_view digits = before.substr(0, before.size() - rest_.size());
    if (!std::all_of(digits.begin(), digits.end(), is_digit)) return number;

    if (const auto denominator = take_denominator()) return *number / *denominator;
    const std::string_view behind = rest_;
    skip_spaces();
    if (const auto numerator = take_whole())
        if (const auto denominator = take_denominator()) return *number + *numerator / *denominator;
    rest_ = behind;
    return number;
}

const Unit* UnitScanner::take_unit(Kind wanted)
{
    const Unit* best = nullptr;
    for (const Unit& unit : units()) {
        if (!stands_here(unit.spelling)) continue;
        const bool is_longer = !best || unit.spelling.size() > best->spelling.size();
        const bool is_wanted = best && unit.spelling == best->spelling && unit.kind == wanted;
        if (is_longer || is_wanted) best = &unit;
    }
    if (best) rest_.remove_prefix(best->spelling.size());
    return best;
}

bool UnitScanner::stands_here(std::string_view spelling) const
{
    if (!rest_.starts_with(spelling)) return false;
    const std::string_view behind = rest_.substr(spelling.size());
    const bool is_mark = spelling == "'" || spelling == "\"";   // 6'3" is written without spaces
    return behind.empty() || behind.front() == ' ' || (is_mark && is_digit(behind.front()));
}

std::optional<double> UnitScanner::take_decimal()
{
    const bool starts_a_number = !rest_.empty() && (is_digit(rest_[0]) || (rest_[0] == '.' && rest_.size() > 1 && is_digit(rest_[1])));
    if (!starts_a_number) return std::nullopt;
    double number = 0.0;
    const auto [end, error] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), number);
    if (error != std::errc{}) return std::nullopt;
    rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
    return number;
}

std::optional<double> UnitScanner::take_whole()
{
    const auto end = std::find_if_not(rest_.begin(), rest_.end(), is_digit);
    if (end == rest_.begin() || end - rest_.begin() > 9) return std::nullopt;
    int number = 0;
    std::from_chars(rest_.data(), rest_.data() + (end - rest_.begin()), number);
    rest_.remove_prefix(static_cast<std::size_t>(end - rest_.begin()));
    return number;
}

/// `/8` of a fraction.
std::optional<double> UnitScanner::take_denominator()
{
    const std::string_view before = rest_;
    if (take('/'))
        if (const auto denominator = take_whole(); denominator && *denominator > 0.0) return denominator;
    rest_ = before;
    return std::nullopt;
}

}
