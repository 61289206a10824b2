#include "quiz/making/generator.hpp"

#include "dust/bag.hpp"
#include "text/show.hpp"

#include <cmath>

namespace flapdoor::quiz {
namespace {

/// Debris to be bagged, and how full a bag may be if its neck is to be twisted.
struct Debris {
    Volume volume;

    double bags(double filled) const { return volume / (dust::bag_volume * filled); }
};

constexpr double twistable = 2.0 / 3.0;     // beyond, more air is pressed out and bags burst: dust/bag.hpp

constexpr Mistake<Debris> debris_mistakes[] = {
    {"filled-to-the-brim", [](const Debris& d) { return std::ceil(d.bags(1.0)); }},
    {"rest-forgotten", [](const Debris& d) { return std::floor(d.bags(twistable)); }},
    {"half-full", [](const Debris& d) { return std::ceil(d.bags(0.5)); }},
    {"doubled", [](const Debris& d) { return 2.0 * std::ceil(d.bags(twistable)); }},
};

std::optional<Made> bags_needed(const Setting& setting)
{
    const Debris debris{1.0_m3 * (0.02 * setting.dice("bags-needed").between(8, 40) + 0.005)};
    const auto figure = made_figure(debris, std::ceil(debris.bags(twistable)), debris_mistakes, as_count);
    if (!figure) return std::nullopt;
    return Made{{{"volume", phrase(text::show(debris.volume))}, {"bag", phrase(text::show(dust::bag_volume))}}, *figure};
}

}

std::vector<Generator> bag_generators() { return {{"bags-needed", {"volume", "bag"}, names_of(debris_mistakes), bags_needed}}; }

}
