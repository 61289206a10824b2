#include "rules/value_match.hpp"

#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"
#include "text/units.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace flapdoor::rules {
namespace {

std::optional<double> plain_number(const std::string& value)
{
    double number = 0.0;
    const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
    if (error != std::errc{} || end != value.data() + value.size() || !std::isfinite(number)) return std::nullopt;
    return number;
}

bool compares(double value, Comparison::Sign sign, double limit, double slack)
{
    switch (sign) {
    case Comparison::Sign::equal: return std::abs(value - limit) <= slack;
    case Comparison::Sign::less: return value < limit - slack;
    case Comparison::Sign::at_most: return value <= limit + slack;
    case Comparison::Sign::greater: return value > limit + slack;
    case Comparison::Sign::at_least: return value >= limit - slack;
    }
    return false;
}

template <class List>
std::string_view kind_in(const List& list, const std::string& id)
{
    for (const auto& thing : list)
        if (thing.id.name == id) return word_of(thing.kind);
    return {};
}

/// The word for the kind of thing an id names in the scenario; empty when the scenario has no such thing.
std::string_view kind_of(ThingKind thing, const std::string& id, const job::Scenario& scenario)
{
    if (thing == ThingKind::supply) return kind_in(scenario.supplies, id);
    if (thing == ThingKind::opening) return kind_in(scenario.openings, id);
    if (thing == ThingKind::component) return kind_in(scenario.components, id);
    if (thing == ThingKind::person)
        for (const job::Person& person : scenario.crew)
            if (person.id.name == id) return word_of(person.role);
    return {};
}

bool id_fits(const std::string& id, const std::string& wanted, ThingKind thing, const std::string& self, const job::Scenario& scenario)
{
    if (wanted == "none") return id.empty();
    if (id.empty()) return false;
    if (wanted == "some") return true;
    return wanted == "this" ? id == self : kind_of(thing, id, scenario) == wanted;
}

bool any_id_fits(const std::string& ids, const std::string& wanted, ThingKind thing, const std::string& self, const job::Scenario& scenario)
{
    if (ids.empty()) return wanted == "none";
    for (std::size_t from = 0; from < ids.size();) {
        const std::size_t comma = std::min(ids.find(", ", from), ids.size());
        if (id_fits(ids.substr(from, comma - from), wanted, thing, self, scenario)) return true;
        from = comma + 2;
    }
    return false;
}

}

Comparison comparison(const std::string& wanted)
{
    using Sign = Comparison::Sign;
    for (const auto& [mark, sign] : {std::pair{"<= ", Sign::at_most}, {">= ", Sign::at_least}, {"< ", Sign::less}, {"> ", Sign::greater}})
        if (wanted.starts_with(mark)) return {sign, wanted.substr(std::string_view(mark).size())};
    return {Sign::equal, wanted};
}

std::optional<double> number_in(const std::string& value, const ParameterWords& words)
{
    if (words.type == ParameterType::whole || words.type == ParameterType::number) return plain_number(value);
    if (words.type != ParameterType::quantity) return std::nullopt;
    const Result<double> si = text::parse_si(value, words.quantity);
    return si ? std::optional(*si) : std::nullopt;
}

bool fits(const std::string& value, const std::string& wanted, const ParameterWords& words, const std::string& self, const job::Scenario& scenario)
{
    if (words.type == ParameterType::id) return id_fits(value, wanted, words.thing, self, scenario);
    if (words.type == ParameterType::id_list) return any_id_fits(value, wanted, words.thing, self, scenario);
    const Comparison asked = comparison(wanted);
    const auto limit = number_in(asked.value, words);
    const auto number = number_in(value, words);
    if (limit && number) return compares(*number, asked.sign, *limit, 0.0);
    return value == wanted;
}

std::optional<std::string> why_unfit(const std::string& wanted, const ParameterWords& words)
{
    switch (words.type) {
    case ParameterType::flag:
        if (wanted == "true" || wanted == "false") return std::nullopt;
        return "true or false";
    case ParameterType::word:
        if (std::find(words.words.begin(), words.words.end(), wanted) != words.words.end()) return std::nullopt;
        return text::one_of(words.words);
    case ParameterType::whole:
    case ParameterType::number:
        if (number_in(comparison(wanted).value, words)) return std::nullopt;
        return "a number, or a limit such as \">= 3\"";
    case ParameterType::quantity:
        if (number_in(comparison(wanted).value, words)) return std::nullopt;
        return fmt::format("{}, or a limit such as \">= {}\"", text::expectation(words.quantity), text::example(words.quantity));
    case ParameterType::id:
    case ParameterType::id_list: {
        if (wanted == "this" || wanted == "none" || wanted == "some") return std::nullopt;
        const auto kinds = kind_words(words.thing);
        if (std::find(kinds.begin(), kinds.end(), wanted) != kinds.end()) return std::nullopt;
        return kinds.empty() ? std::string("\"this\", \"some\" or \"none\"") : "\"this\", \"some\", \"none\" or a kind: " + text::one_of(kinds);
    }
    case ParameterType::text: return std::nullopt;
    }
    return std::nullopt;
}

std::optional<double> measure_number(const std::string& limit, job::MeasureKind kind)
{
    using job::MeasureKind;
    const auto si = [&](text::Kind quantity) -> std::optional<double> {
        const Result<double> value = text::parse_si(limit, quantity);
        return value ? std::optional(*value) : std::nullopt;
    };
    switch (kind) {
    case MeasureKind::truth: return limit == "true" ? std::optional(1.0) : limit == "false" ? std::optional(0.0) : std::nullopt;
    case MeasureKind::length: return si(text::Kind::length);
    case MeasureKind::area: return si(text::Kind::area);
    case MeasureKind::time: return si(text::Kind::time);
    case MeasureKind::loading: return si(text::Kind::loading);
    case MeasureKind::mass: return si(text::Kind::mass);
    case MeasureKind::number:
    case MeasureKind::share: return plain_number(limit);
    }
    return std::nullopt;
}

bool measure_fits(double value, const Comparison& wanted, job::MeasureKind kind)
{
    const auto limit = measure_number(wanted.value, kind);
    return limit && compares(value, wanted.sign, *limit, std::abs(*limit) * 1e-9);
}

std::string show_measure(double value, job::MeasureKind kind)
{
    using job::MeasureKind;
    switch (kind) {
    case MeasureKind::truth: return std::string(value != 0.0 ? text::to_say("yes") : text::to_say("no"));
    case MeasureKind::length: return text::show_short(Length{value});
    case MeasureKind::area: return text::show_short(Area{value});
    case MeasureKind::time: return text::show(Time{value});
    case MeasureKind::loading: return text::show_short(Loading{value});
    case MeasureKind::mass: return text::show_short(Mass{value});
    case MeasureKind::share: return text::show_percent(value);
    case MeasureKind::number: return text::show_number(value);
    }
    return {};
}

}
