#include "quiz/qti/figure_units.hpp"
#include "quiz/qti/item_reading.hpp"

#include "text/quote.hpp"

#include <fmt/format.h>

#include <cmath>
#include <sstream>

namespace flapdoor::quiz {

namespace {

bool is_same(double a, double b) { return std::fabs(a - b) <= 1e-9 * std::max(std::fabs(a), std::fabs(b)); }

/// What stands behind the blank, when it is short enough for a unit.
std::string behind(const XmlElement& inside, const XmlElement& interaction)
{
    bool is_next = false;
    for (const auto& part : inside.content) {
        if (const auto* element = std::get_if<XmlElement>(&part)) {
            if (is_next) return {};
            if (element == &interaction) is_next = true;
            else if (const std::string deeper = behind(*element, interaction); !deeper.empty()) return deeper;
        }
        else if (is_next) {
            std::istringstream words(std::get<std::string>(part));
            std::string unit;
            for (std::string word; words >> word;) unit += (unit.empty() ? "" : " ") + word;
            while (!unit.empty() && (unit.back() == '.' || unit.back() == ',')) unit.pop_back();
            if (unit.size() <= 12) return unit;
            return {};
        }
    }
    return {};
}

/// The tolerance beside the comparison with the key, as `"0.1 ft"` or `"5 %"`.
Tolerance tolerance_of(ItemReading& item, const std::string& unit)
{
    Tolerance tolerance;
    const auto all = all_named(item.root, "equal");
    if (all.empty()) return tolerance;
    const XmlElement& equal = *all.front();
    const std::string mode = equal.attribute("toleranceMode").value_or("exact");
    if (mode == "exact") return tolerance;
    std::istringstream words(equal.attribute("tolerance").value_or(""));
    double low = 0.0, high = 0.0;
    if (!(words >> low) || !(low >= 0.0)) {
        item.note(equal, std::string(text::say("Its tolerance cannot be read; only the key itself counts as right.")));
        return tolerance;
    }
    if (!(words >> high)) high = low;
    if (low != high) item.note(equal, std::string(text::say("Its tolerance is wider on one side; the narrower one is taken.")));
    const std::string width = fmt::format("{:.10g}", std::min(low, high));
    if (width == "0") return tolerance;
    const std::string written = mode == "relative" ? width + " %" : unit.empty() ? width : width + " " + unit;
    const auto read = number_in(written);
    if (!read) return tolerance;
    tolerance.text = written;
    tolerance.unit = read->unit;
    tolerance.si = read->si;
    tolerance.is_share = read->unit.is_percent;
    return tolerance;
}

/// Wrong figures with something to say that an item of ours carries.
std::vector<WrongFigure> wrong_figures(const ItemReading& item)
{
    std::vector<WrongFigure> all;
    for (const XmlElement* block : all_named(*item.body, "feedbackBlock")) {
        const auto text = block->attribute("data-flapdoor-figure");
        const auto figure = text ? figure_from(*text, {}) : std::nullopt;
        if (!figure) continue;
        all.push_back({*figure, block->attribute("data-flapdoor-misconception").value_or(""), told_of(item, block->attribute("identifier").value_or(""), not_right)});
    }
    return all;
}

/// Ours as it was written here, while the file still says the same.
template <class Written>
void restore(Written& read, const std::optional<std::string>& as_written)
{
    const auto number = as_written ? number_in(*as_written) : std::nullopt;
    if (number && number->unit == read.unit && is_same(number->si, read.si)) read.text = *as_written;
}

}

std::optional<AnyKind> read_text_entry(ItemReading& item, const XmlElement& interaction)
{
    const std::vector<std::string> key = key_of(item, interaction);
    if (key.empty()) return item.give_up(interaction, std::string(text::say("It has no key: which answer is right is not in the file.")));
    if (key.size() > 1) item.note(interaction, std::string(text::say("Several answers count as right there; the first is taken.")));
    const std::string unit = behind(*item.body, interaction);
    auto figure = unit.empty() ? std::nullopt : figure_from(key.front(), unit);
    const bool has_unit = figure && figure->unit != NumberUnit{};
    if (!has_unit) figure = figure_from(key.front(), {});
    if (!figure) return item.give_up(interaction, text::say_with("Its answer is {}; only numbers can be typed here.", text::quoted(key.front())));
    if (has_unit && !item.is_ours) item.note(interaction, text::say_with("{} behind the blank is taken for the unit of the answer.", text::quoted(unit)));
    Number asked;
    asked.tolerance = tolerance_of(item, has_unit ? unit : std::string());
    asked.answer = std::move(*figure);
    restore(asked.answer, interaction.attribute("data-flapdoor-answer"));
    restore(asked.tolerance, interaction.attribute("data-flapdoor-tolerance"));
    asked.wrong = wrong_figures(item);
    return asked;
}

}
