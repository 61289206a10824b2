#include "text/units.hpp"

#include "core/insist.hpp"
#include "text/nearest.hpp"
#include "text/quote.hpp"
#include "text/significant.hpp"
#include "text/unit_scanner.hpp"
#include "text/unit_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <utility>

namespace flapdoor::text {
namespace {

constexpr std::size_t longest_text = 80;

double to_si(const Unit& unit, double number)
{
    if (unit.spelling == "C") return celsius(number).kelvin;
    if (unit.spelling == "F") return fahrenheit(number).kelvin;
    return number * unit.times / unit.over;
}

double from_si(const Unit& unit, double si)
{
    if (unit.spelling == "C") return si - 273.15;
    if (unit.spelling == "F") return (si - 273.15) * 1.8 + 32.0;
    return si / unit.times * unit.over;
}

/// The SI value, or what is wrong with the text, to stand in parentheses behind it (empty: it is no number at all).
using Reading = tl::expected<double, std::string>;

tl::unexpected<std::string> wrong(std::string why) { return tl::unexpected<std::string>(std::move(why)); }

std::string article(std::string_view word)
{
    const bool is_vowel = std::string_view("aeiou").find(word.front()) != std::string_view::npos;
    return std::string(is_vowel ? "an " : "a ") + std::string(word);
}

tl::unexpected<std::string> no_such_unit(const UnitScanner& scanner, Kind kind)
{
    if (scanner.at_end()) return wrong("no unit");
    if (scanner.starts_with(',')) return wrong("write a decimal point, not a comma");
    const std::vector<std::string_view> known = spellings(kind);
    const auto near = nearest(scanner.word(), known);
    const std::string unknown = "unknown unit " + text::quoted(scanner.word(), 20);
    return wrong(near ? fmt::format("{}; nearest known is \"{}\"", unknown, *near) : unknown);
}

/// `08:05` or `08:05:30`: hours, minutes and seconds.
std::optional<double> parse_clock(std::string_view text)
{
    const auto number = [&](std::size_t from, std::size_t digits) {
        int value = -1;
        if (text.size() >= from + digits && std::all_of(text.data() + from, text.data() + from + digits, is_digit))
            std::from_chars(text.data() + from, text.data() + from + digits, value);
        return value;
    };
    const std::size_t colon = text.find(':');
    if (colon != 1 && colon != 2) return std::nullopt;
    const bool has_seconds = text.size() == colon + 6 && text[colon + 3] == ':';
    if (text.size() != colon + 3 && !has_seconds) return std::nullopt;
    const int hours = number(0, colon), minutes = number(colon + 1, 2), seconds = has_seconds ? number(colon + 4, 2) : 0;
    if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59 || seconds < 0 || seconds > 59) return std::nullopt;
    return hours * 3600.0 + minutes * 60.0 + seconds;
}

/// The value of a text without regard to how large it is.
Reading read_any_size(std::string_view text, Kind kind)
{
    if (kind == Kind::time)
        if (const auto clock = parse_clock(text)) return *clock;

    UnitScanner scanner(text);
    scanner.skip_spaces();
    const double sign = scanner.take('-') ? -1.0 : 1.0;
    double sum = 0.0;
    int rank = 0;
    for (int part = 0; part == 0 || !scanner.at_end(); ++part) {
        scanner.skip_spaces();
        const auto number = scanner.take_number();
        if (!number) return wrong(part == 0 ? "" : "something behind the unit");
        scanner.skip_spaces();
        const Unit* unit = scanner.take_unit(kind);
        if (!unit) return no_such_unit(scanner, kind);
        if (unit->kind != kind) return wrong(article(noun(unit->kind)));
        if (part > 0 && (rank == 0 || unit->rank <= rank)) return wrong("units that do not follow each other");
        sum = part == 0 ? to_si(*unit, sign * *number) : sum + to_si(*unit, sign * *number);
        rank = unit->rank;
        scanner.skip_spaces();
    }
    return sum;
}

Reading read_quantity(std::string_view text, Kind kind)
{
    const Reading reading = read_any_size(text, kind);
    if (reading && !(std::abs(*reading) <= largest(kind)))
        return wrong(fmt::format("too large, the most is {}", canonical_text(largest(kind), kind)));
    return reading;
}

/// A whole number of a unit, counted in integers: a double would round from 9 kg on. Nothing for any other text.
std::optional<Picograms> count_whole(std::string_view text)
{
    std::int64_t number = 0;
    const char* const text_end = text.data() + text.size();
    const auto [end, error] = std::from_chars(text.data(), text_end, number);
    if (error != std::errc{} || number < 0 || end == text_end || *end != ' ') return std::nullopt;
    const std::string_view spelling(end + 1, static_cast<std::size_t>(text_end - end - 1));
    for (const Unit& unit : units()) {
        if (unit.kind != Kind::dust_mass || unit.spelling != spelling) continue;
        const auto size = static_cast<std::int64_t>(unit.times);
        if (number <= static_cast<std::int64_t>(largest(Kind::dust_mass)) / size) return Picograms{number * size};
    }
    return std::nullopt;
}

/// Shorter is better; a point or an exponent makes a text harder to read.
std::size_t burden(std::string_view text)
{
    const bool has_point = text.find('.') != std::string_view::npos;
    const bool has_exponent = text.find("e+") != std::string_view::npos || text.find("e-") != std::string_view::npos;
    return text.size() + (has_point ? 3 : 0) + (has_exponent ? 4 : 0);
}

/// The text with fewest digits of `head` + number + unit that reads back as exactly `si`; empty when none does.
std::string shortest(std::string_view head, double number, const Unit& unit, double si, Kind kind)
{
    for (int digits = 1; digits <= 17; ++digits) {
        const std::string text = fmt::format("{}{} {}", head, round_to_digits(number, digits), unit.spelling);
        const Reading back = read_any_size(text, kind);
        if (back && *back == si) return text;
    }
    return {};
}

/// `6 ft 3 in`: whole numbers of the larger unit, the rest in the smaller.
std::string in_two(const Unit& large, const Unit& small, double si, Kind kind)
{
    const double whole = std::floor(from_si(large, std::abs(si)));
    const double rest = from_si(small, std::abs(si) - to_si(large, whole));
    if (whole < 1.0 || whole > 1e6 || !(rest > 0.0)) return {};
    return shortest(fmt::format("{}{} {} ", si < 0.0 ? "-" : "", whole, large.spelling), rest, small, si, kind);
}

}

std::string_view noun(Kind kind)
{
    switch (kind) {
        case Kind::length: return "length";
        case Kind::area: return "area";
        case Kind::volume: return "volume";
        case Kind::time: return "time";
        case Kind::rate: return "rate";
        case Kind::speed: return "speed";
        case Kind::diffusivity: return "diffusivity";
        case Kind::air_flow: return "air flow";
        case Kind::pressure: return "pressure";
        case Kind::viscosity: return "viscosity";
        case Kind::mass: return "mass";
        case Kind::density: return "density";
        case Kind::loading: return "loading";
        case Kind::temperature: return "temperature";
        case Kind::dust_mass: return "mass";
    }
    return "value";
}

std::string_view example(Kind kind)
{
    switch (kind) {
        case Kind::length: return "0.5 in";
        case Kind::area: return "12 ft2";
        case Kind::volume: return "2 gal";
        case Kind::time: return "1 h 20 min";
        case Kind::rate: return "0.5 /h";
        case Kind::speed: return "0.3 m/s";
        case Kind::diffusivity: return "0.01 m2/s";
        case Kind::air_flow: return "100 cfm";
        case Kind::pressure: return "5 Pa";
        case Kind::viscosity: return "18 uPa s";
        case Kind::mass: return "0.25 kg";
        case Kind::density: return "2000 kg/m3";
        case Kind::loading: return "40 ug/ft2";
        case Kind::temperature: return "68 F";
        case Kind::dust_mass: return "40 ug";
    }
    return "";
}

std::string expectation(Kind kind) { return fmt::format("{} such as \"{}\"", article(noun(kind)), example(kind)); }

Result<double> parse_si(std::string_view text, Kind kind, const Place& where)
{
    const auto refuse = [&](std::string_view why) {
        return failed({where, expectation(kind), why.empty() ? text::quoted(text) : fmt::format("{} ({})", text::quoted(text), why)});
    };
    if (text.size() > longest_text) return refuse("too long");
    const Reading reading = read_quantity(plain(text), kind);
    if (!reading) return refuse(reading.error());
    return *reading;
}

std::string canonical_text(double si, Kind kind)
{
    insist(std::isfinite(si) && std::abs(si) <= largest(kind), "a quantity is finite and of a size that can be meant");
    std::string best;
    std::size_t least = 0;
    std::size_t place = 0;      // of the unit in the table, which begins with the customary ones
    const auto offer = [&](std::string text) {
        if (text.empty() || (!best.empty() && burden(text) + place >= least)) return;
        least = burden(text) + place;
        best = std::move(text);
    };

    const Unit* larger = nullptr;
    for (const Unit& unit : units()) {
        if (unit.kind != kind || !unit.is_canonical) continue;
        if (si == 0.0 && !best.empty()) break;      // nothing is nothing in every unit: the first will do
        offer(shortest("", from_si(unit, si), unit, si, kind));
        if (larger && unit.rank == larger->rank + 1) offer(in_two(*larger, unit, si, kind));
        larger = unit.rank > 0 ? &unit : nullptr;
        ++place;
    }
    insist(!best.empty(), "the SI unit of a kind is among its canonical ones");
    return best;
}

Result<Picograms> parse_picograms(std::string_view text, const Place& where)
{
    if (const auto whole = count_whole(text)) return *whole;
    const Result<double> count = parse_si(text, Kind::dust_mass, where);
    if (!count) return failed(count.error());
    if (*count < 0.0) return failed({where, expectation(Kind::dust_mass), text::quoted(text) + " (less than nothing)"});
    return Picograms{std::llround(*count)};
}

std::string canonical_text(Picograms amount)
{
    for (const Unit& unit : units()) {
        if (unit.kind != Kind::dust_mass || !unit.is_canonical) continue;
        const auto size = static_cast<std::int64_t>(unit.times);
        if (amount.count % size == 0 && (amount.count != 0 || size == 1'000'000)) return fmt::format("{} {}", amount.count / size, unit.spelling);
    }
    return fmt::format("{} pg", amount.count);
}

std::string canonical_text(double number)
{
    const std::string text = fmt::format("{}", number);
    return text.find_first_not_of("-0123456789") == std::string::npos ? text + ".0" : text;
}

}
