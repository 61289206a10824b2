#include "quiz/making/generator.hpp"

#include "dust/exposure.hpp"
#include "rules/worker_limits.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace flapdoor::quiz {
namespace {

Density micrograms(double per_cubic_meter) { return {per_cubic_meter * 1e-9}; }

/// Two spells at dusty work; the rest of the eight hours without lead.
struct Shift {
    std::array<dust::Spell, 2> spells;

    Time worked() const { return spells[0].time + spells[1].time; }
    double mean() const { return dust::eight_hour_average(spells).si; }
};

constexpr Mistake<Shift> shift_mistakes[] = {
    {"divided-by-the-dusty-time", [](const Shift& s) { return s.mean() * (8.0_h / s.worked()); }},
    {"plain-mean", [](const Shift& s) { return 0.5 * (s.spells[0].concentration.si + s.spells[1].concentration.si); }},
    {"highest-counts", [](const Shift& s) { return std::max(s.spells[0].concentration.si, s.spells[1].concentration.si); }},
    {"times-left-out", [](const Shift& s) { return (s.spells[0].concentration.si + s.spells[1].concentration.si) / 8.0; }},
};

std::optional<Made> time_weighted(const Setting& setting)
{
    Dice dice = setting.dice("time-weighted-exposure");
    const Shift shift{{{{micrograms(10.0 * dice.between(5, 40)), 0.5_h * dice.between(1, 5)}, {micrograms(10.0 * dice.between(2, 15)), 0.5_h * dice.between(2, 6)}}}};
    const auto figure = made_figure(shift, shift.mean(), shift_mistakes, as_concentration, 0.02);
    if (!figure) return std::nullopt;
    std::map<std::string, Phrase> blanks;
    for (std::size_t i = 0; i < 2; ++i) {
        blanks[fmt::format("air-{}", i + 1)] = as_concentration(shift.spells[i].concentration.si).shown;
        blanks[fmt::format("time-{}", i + 1)] = phrase(text::show(shift.spells[i].time));
    }
    return Made{std::move(blanks), *figure};
}

struct LongShift {
    Time shift;
};

constexpr Mistake<LongShift> long_mistakes[] = {
    {"same-for-every-shift", [](const LongShift&) { return rules::allowed_mean(8.0_h).si; }},
    {"scaled-the-wrong-way", [](const LongShift& s) { return rules::allowed_mean(8.0_h).si * (s.shift / 8.0_h); }},
    {"action-level", [](const LongShift&) { return dust::lead_action_level.si; }},
    {"hours-taken-off", [](const LongShift& s) { return rules::allowed_mean(8.0_h).si - 1e-9 * (s.shift / 1.0_h); }},
};

std::optional<Made> long_shift(const Setting& setting)
{
    const LongShift shift{1.0_h * setting.dice("long-shift-limit").between(9, 12)};
    const auto figure = made_figure(shift, rules::allowed_mean(shift.shift).si, long_mistakes, as_concentration, 0.01);
    if (!figure) return std::nullopt;
    return Made{{{"shift", phrase(text::show(shift.shift))}}, *figure};
}

struct Stay {
    Density air;
};

constexpr Mistake<Stay> stay_mistakes[] = {
    {"action-level-for-limit", [](const Stay& s) { return dust::time_to_reach(dust::lead_action_level, s.air).si; }},
    {"whole-shift-always", [](const Stay&) { return (8.0_h).si; }},
    {"no-time-at-all", [](const Stay&) { return 0.0; }},
    {"of-one-hour", [](const Stay& s) { return (1.0_h).si * (dust::lead_limit / s.air); }},
};

std::optional<Made> time_to_limit(const Setting& setting)
{
    const Stay stay{micrograms(50.0 * setting.dice("time-to-limit").between(2, 12))};
    const auto figure = made_figure(stay, dust::time_to_reach(dust::lead_limit, stay.air).si, stay_mistakes, as_time, 0.02);
    if (!figure) return std::nullopt;
    return Made{{{"air", as_concentration(stay.air.si).shown}}, *figure};
}

}

std::vector<Generator> air_generators()
{
    return {{"time-weighted-exposure", {"air-1", "time-1", "air-2", "time-2"}, names_of(shift_mistakes), time_weighted},
            {"long-shift-limit", {"shift"}, names_of(long_mistakes), long_shift},
            {"time-to-limit", {"air"}, names_of(stay_mistakes), time_to_limit}};
}

}
