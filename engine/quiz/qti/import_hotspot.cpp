#include "quiz/qti/item_reading.hpp"

#include "text/quote.hpp"
#include "text/units.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <sstream>

namespace flapdoor::quiz {

namespace {

std::optional<Across> across_of(const std::optional<std::string>& text)
{
    if (!text) return std::nullopt;
    const std::size_t middle = text->find(';');
    if (middle == std::string::npos) return std::nullopt;
    const auto x = text::parse_quantity<Length>(text->substr(0, middle)), y = text::parse_quantity<Length>(text->substr(std::min(middle + 2, text->size())));
    if (!x || !y) return std::nullopt;
    return Across{*x, *y};
}

/// An item that was exported from a plan here, while its scenario is still known and says the same.
std::optional<AnyKind> on_our_plan(ItemReading& item, const XmlElement& interaction)
{
    const auto scenario = interaction.attribute("data-flapdoor-scenario");
    if (!scenario) return std::nullopt;
    const auto site = item.find(*scenario);
    if (!site || *site == nullptr) {
        item.note(interaction, text::say_with("The scenario {} is not known here: its places become answers to choose from.", text::quoted(*scenario)));
        return std::nullopt;
    }
    const std::vector<std::string> key = key_of(item, interaction);
    PointAtPlan asked;
    asked.scenario = {*scenario, interaction.where};
    for (const XmlElement* spot : interaction.children("hotspotChoice")) {
        const std::string identifier = spot->attribute("identifier").value_or("");
        Region region;
        region.id = id_of(*spot);
        region.text = phrase_of(spot->attribute("hotspotLabel").value_or(""));
        if (const auto thing = spot->attribute("data-flapdoor-thing")) region.thing = rules::Marked{*thing, spot->where};
        region.at = across_of(spot->attribute("data-flapdoor-at"));
        region.size = across_of(spot->attribute("data-flapdoor-size"));
        if (const auto tolerance = text::parse_quantity<Length>(spot->attribute("data-flapdoor-tolerance").value_or(""))) region.tolerance = *tolerance;
        region.is_right = std::find(key.begin(), key.end(), identifier) != key.end();
        if (!region.is_right) region.misconception = spot->attribute("data-flapdoor-misconception").value_or(region.id.text);
        if (!region.is_right || item.told.contains(identifier)) region.told = told_of(item, identifier, not_right);
        asked.regions.push_back(std::move(region));
    }
    return asked;
}

/// Where an area lies in its picture, in words: there is no picture here.
std::string place_in_words(const XmlElement& spot, double width, double height)
{
    std::istringstream words([&] {
        std::string coords = spot.attribute("coords").value_or("");
        std::replace(coords.begin(), coords.end(), ',', ' ');
        return coords;
    }());
    std::vector<double> numbers;
    for (double number = 0.0; words >> number;) numbers.push_back(number);
    if (numbers.size() < 2 || !(width > 0.0) || !(height > 0.0)) return {};
    double x = numbers[0], y = numbers[1];
    if (spot.attribute("shape") == "rect" && numbers.size() >= 4) {
        x = 0.5 * (numbers[0] + numbers[2]);
        y = 0.5 * (numbers[1] + numbers[3]);
    }
    else if (spot.attribute("shape") == "poly") {
        x = y = 0.0;
        const std::size_t points = numbers.size() / 2;
        for (std::size_t i = 0; i < points; ++i) {
            x += numbers[2 * i] / static_cast<double>(points);
            y += numbers[2 * i + 1] / static_cast<double>(points);
        }
    }
    constexpr std::array<std::string_view, 3> rows{text::to_say("above"), text::to_say("at mid height"), text::to_say("below")};
    constexpr std::array<std::string_view, 3> columns{text::to_say("left"), text::to_say("in the middle"), text::to_say("right")};
    const auto third = [](double at, double whole) { return static_cast<std::size_t>(std::clamp(3.0 * at / whole, 0.0, 2.0)); };
    return text::say_with("{} {} ({} % from the left, {} % from the top)", text::say(rows[third(y, height)]), text::say(columns[third(x, width)]), fmt::format("{:.0f}", 100.0 * std::clamp(x / width, 0.0, 1.0)),
                          fmt::format("{:.0f}", 100.0 * std::clamp(y / height, 0.0, 1.0)));
}

double pixels(const XmlElement* picture, std::string_view side)
{
    const auto number = picture ? number_in(picture->attribute(side).value_or("")) : std::nullopt;
    return number ? number->si : 0.0;
}

}

std::optional<AnyKind> read_hotspot(ItemReading& item, const XmlElement& interaction)
{
    if (auto asked = on_our_plan(item, interaction)) return asked;
    const XmlElement* picture = interaction.child("img") ? interaction.child("img") : interaction.child("object");
    const double width = pixels(picture, "width"), height = pixels(picture, "height");
    std::vector<Option> options;
    std::vector<std::string> identifiers;
    for (const XmlElement* spot : interaction.children("hotspotChoice")) {
        Option option;
        option.id = id_of(*spot);
        std::string words = spot->attribute("hotspotLabel").value_or(spot->attribute("aria-label").value_or(""));
        if (words.empty()) words = place_in_words(*spot, width, height);
        if (words.empty()) return item.give_up(*spot, std::string(text::say("This area has no name and no place in a picture of known size.")));
        option.text = phrase_of(words);
        identifiers.push_back(spot->attribute("identifier").value_or(""));
        options.push_back(std::move(option));
    }
    const std::string source = picture ? picture->attribute("src").value_or(picture->attribute("data").value_or("")) : std::string();
    item.note(interaction, text::say_with("The picture {} does not come along: its areas become answers to choose from. Show it beside the question.", text::quoted(source)));
    const XmlElement* declaration = declaration_of(item, interaction);
    return choice_among(item, interaction, std::move(options), identifiers, declaration != nullptr && declaration->attribute("cardinality") == "single");
}

}
