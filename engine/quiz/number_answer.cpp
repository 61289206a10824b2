#include "quiz/number_answer.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>

namespace flapdoor::quiz {

namespace {

constexpr auto last_kind = text::Kind::temperature;     // dust_mass holds no unit that mass does not

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

bool is_bare_number(std::string_view answer)
{
    return !answer.empty() && answer.find_first_not_of("0123456789.,-+ ") == std::string_view::npos && answer.find_first_of("0123456789") != std::string_view::npos;
}

/// The plain number a text begins with, and what follows it.
struct Begun {
    double number = 0.0;
    std::string_view rest;
};

std::optional<Begun> begun(std::string_view text)
{
    text = trimmed(text);
    if (text.size() > 64) return std::nullopt;
    if (text.starts_with('+')) text.remove_prefix(1);
    // A comma between thousands, as people write them; a decimal comma is not the custom of this trade's country.
    std::string digits;
    std::size_t used = 0;
    for (; used < text.size() && (text.find_first_of("0123456789.,-", used) == used); ++used)
        if (text[used] != ',') digits += text[used];
    double number = 0.0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (digits.empty() || error != std::errc() || end != digits.data() + digits.size() || !std::isfinite(number)) return std::nullopt;
    return Begun{number, trimmed(text.substr(used))};
}

bool is_word(std::string_view text) { return text.find_first_of("0123456789") == std::string_view::npos; }

bool is_near(double value, const NumberKey& key)
{
    // 72 in and 6 ft differ in the last bit: turning units into SI rounds.
    const double rounding = 1e-9 * std::fabs(key.si);
    const double allowed = std::max(key.absolute_tolerance, key.relative_tolerance * std::fabs(key.si));
    return std::fabs(value - key.si) <= allowed + rounding;
}

NumberMark mark_plain(std::string_view answer, const NumberKey& key)
{
    const auto plain = begun(answer);
    if (!plain || !is_word(plain->rest)) return NumberMark::wrong_kind;
    if (key.unit.is_percent) {
        if (plain->rest.empty()) return NumberMark::no_unit;
        if (plain->rest != "%" && plain->rest != "percent" && plain->rest != "por ciento") return NumberMark::wrong_kind;
        return is_near(plain->number / 100.0, key) ? NumberMark::right : NumberMark::wrong;
    }
    if (!plain->rest.empty() && number_in(answer)) return NumberMark::wrong_kind;
    return is_near(plain->number, key) ? NumberMark::right : NumberMark::wrong;
}

}

std::optional<WrittenNumber> number_in(std::string_view text)
{
    if (const auto plain = begun(text)) {
        if (plain->rest.empty()) return WrittenNumber{{}, plain->number};
        if (plain->rest == "%") return WrittenNumber{NumberUnit::percent(), plain->number / 100.0};
    }
    for (int kind = 0; kind <= static_cast<int>(last_kind); ++kind)
        if (const auto si = text::parse_si(text, static_cast<text::Kind>(kind))) return WrittenNumber{static_cast<text::Kind>(kind), *si};
    return std::nullopt;
}

std::optional<WrittenNumber> difference_in(std::string_view text)
{
    std::optional<WrittenNumber> number = number_in(text);
    if (!number || !number->unit.kind) return number;
    const auto none = text::parse_si("0 " + std::string(begun(text)->rest), *number->unit.kind);
    if (!none) return std::nullopt;
    number->si -= *none;
    return number;
}

NumberMark mark_number(std::string_view answer, const NumberKey& key)
{
    if (!key.unit.kind) return mark_plain(answer, key);
    if (is_bare_number(answer)) return NumberMark::no_unit;
    const Result<double> value = text::parse_si(answer, *key.unit.kind);
    if (!value) return NumberMark::wrong_kind;
    return is_near(*value, key) ? NumberMark::right : NumberMark::wrong;
}

}
