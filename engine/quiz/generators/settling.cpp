#include "quiz/making/generator.hpp"

#include "dust/settling.hpp"
#include "mechanics/gravity.hpp"
#include "rules/things.hpp"
#include "text/show.hpp"
#include "text/significant.hpp"

#include <fmt/format.h>

#include <cmath>

namespace flapdoor::quiz {
namespace {

/// A particle that falls from a height in still air.
struct Fall {
    Length size, height;

    static constexpr Length known = 50.0_um;    ///< a size whose fall people have in mind
    double ratio() const { return size / known; }
    double with(double speed_ratio) const { return (height / (dust::settling_speed(known, {}) * speed_ratio)).si; }
};

constexpr Mistake<Fall> fall_mistakes[] = {
    {"speed-by-diameter", [](const Fall& f) { return f.with(f.ratio()); }},
    {"speed-by-volume", [](const Fall& f) { return f.with(f.ratio() * f.ratio() * f.ratio()); }},
    {"every-size-alike", [](const Fall& f) { return f.with(1.0); }},
    {"like-a-stone", [](const Fall& f) { return std::sqrt(2.0 * f.height.si / mechanics::gravity.si); }},
};

std::optional<Made> settling_time(const Setting& setting)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr) return std::nullopt;
    Dice dice = setting.dice("settling-time");
    const std::vector<int> sizes{5, 10, 20};
    const Fall fall{1.0_um * dice.one_of(sizes), dice.between(0, 1) == 0 ? room->ceiling : 1.0_ft * dice.between(3, 6)};
    const auto figure = made_figure(fall, (fall.height / dust::settling_speed(fall.size, {})).si, fall_mistakes, as_rough_time, 0.2);
    if (!figure) return std::nullopt;
    return Made{{{"size", phrase(fmt::format("{} um", static_cast<int>(fall.size / 1.0_um + 0.5)))}, {"height", phrase(text::show(fall.height))},
                 {"known", phrase(text::show(Time{text::round_to_digits(fall.with(1.0), 2)}))}}, *figure};
}

}

std::vector<Generator> settling_generators() { return {{"settling-time", {"size", "height", "known"}, names_of(fall_mistakes), settling_time}}; }

}
