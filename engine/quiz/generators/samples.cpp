#include "quiz/making/generator.hpp"

#include "rules/clearance.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::quiz {
namespace {

/// What a laboratory found on a cloth, and the rectangle that was wiped with it.
struct Sample {
    int wide = 12, deep = 12;   // in
    double micrograms = 10.0;

    double square_feet() const { return wide * deep / 144.0; }
    double of(double square_feet_counted) const { return (1.0_ugpft2).si * micrograms / square_feet_counted; }
};

constexpr Mistake<Sample> sample_mistakes[] = {
    {"area-left-out", [](const Sample& s) { return s.of(1.0); }},
    {"multiplied-by-the-area", [](const Sample& s) { return s.of(1.0 / s.square_feet()); }},
    {"twelve-in-a-square-foot", [](const Sample& s) { return s.of(s.wide * s.deep / 12.0); }},
    {"one-side-only", [](const Sample& s) { return s.of(s.wide / 12.0); }},
};

std::optional<Made> wipe_loading(const Setting& setting)
{
    Dice dice = setting.dice("wipe-loading");
    const std::vector<std::pair<int, int>> sizes{{12, 6}, {6, 6}, {4, 36}, {4, 18}, {3, 24}, {16, 18}, {12, 24}};
    const auto [wide, deep] = dice.one_of(sizes);
    const Sample sample{wide, deep, static_cast<double>(dice.between(2, 30))};
    const auto figure = made_figure(sample, sample.of(sample.square_feet()), sample_mistakes, as_loading, 0.02);
    if (!figure) return std::nullopt;
    return Made{{{"mass", phrase(fmt::format("{} ug", static_cast<int>(sample.micrograms)))}, {"wide", phrase(fmt::format("{} in", wide))},
                 {"deep", phrase(fmt::format("{} in", deep))}}, *figure};
}

using rules::SampledSurface;
using text::to_say;

/// Levels before the present ones: floors and sills 2021 to 2024, troughs since 2001.
Loading former_level(SampledSurface surface) { return surface == SampledSurface::floor ? 10.0_ugpft2 : surface == SampledSurface::sill ? 100.0_ugpft2 : 400.0_ugpft2; }

constexpr std::string_view sample_text(SampledSurface surface)
{
    switch (surface) {
    case SampledSurface::floor: return to_say("Floor: {loading}");
    case SampledSurface::sill: return to_say("Window sill: {loading}");
    case SampledSurface::trough: return to_say("Window trough: {loading}");
    }
    return {};
}

std::optional<Made> below_action_level(const Setting& setting)
{
    Dice dice = setting.dice("below-action-level");
    MadeChoice choice;
    std::vector<std::pair<SampledSurface, double>> cases;      // surface, multiple of its level
    for (const SampledSurface surface : {SampledSurface::floor, SampledSurface::sill, SampledSurface::trough}) {
        cases.emplace_back(surface, 0.1 * dice.between(3, 8));
        cases.emplace_back(surface, dice.between(0, 1) == 0 ? 1.0 : 0.1 * dice.between(13, 19));
    }
    dice.shuffle(cases);
    cases.resize(5);
    for (const auto& [surface, multiple] : cases) {
        const Loading level = rules::clearance_level(surface), found = level * multiple;
        const bool is_right = rules::is_cleared(surface, found);
        const std::string_view mistake = is_right ? "" : multiple == 1.0 ? "equal-passes" : found < former_level(surface) ? "former-level" : "above-every-level";
        MadeOption option{fmt::format("{}-{}", static_cast<int>(surface), static_cast<int>(multiple * 100.0 + 0.5)), phrase(sample_text(surface)), is_right, std::string(mistake)};
        option.text.blanks["loading"] = as_loading(found.si).shown;
        choice.options.push_back(std::move(option));
    }
    const auto right = std::count_if(choice.options.begin(), choice.options.end(), [](const MadeOption& option) { return option.is_right; });
    if (right == 0 || right == static_cast<std::ptrdiff_t>(choice.options.size())) return std::nullopt;
    return Made{{}, std::move(choice)};
}

}

std::vector<Generator> sample_generators()
{
    return {{"wipe-loading", {"mass", "wide", "deep"}, names_of(sample_mistakes), wipe_loading},
            {"below-action-level", {}, {"equal-passes", "former-level", "above-every-level"}, below_action_level}};
}

}
