#include "air/flap.hpp"

#include "air/leak.hpp"
#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace flapdoor::air {

Torque weight_moment(const Flap& flap)
{
    insist(flap.length.si > 0.0 && flap.width.si > 0.0 && flap.sheet.si > 0.0 && flap.dowel.si >= 0.0, "a flap has a size and a weight");
    return (flap.sheet * 0.5 + flap.dowel) * gravity * flap.length;
}

double opening_sine(const Flap& flap, Pressure away_from_frame)
{
    const Torque push = away_from_frame * (flap.width * flap.length * flap.length) * 0.5;
    return std::clamp(push / weight_moment(flap), 0.0, 1.0);
}

double opening_angle(const Flap& flap, Pressure away_from_frame)
{
    const double sine = opening_sine(flap, away_from_frame);
    const double cosine = std::sqrt(1.0 - sine * sine);
    return cosine > 0.0 ? steady::atan(sine / cosine) : 0.5 * std::numbers::pi;
}

Pressure pressure_to_hold(const Flap& flap, double radians)
{
    insist(radians >= 0.0 && radians <= 0.5 * std::numbers::pi, "a flap opens between hanging and level");
    return weight_moment(flap) * (2.0 * steady::sin(radians)) / (flap.width * flap.length * flap.length);
}

Area gap_area(const Flap& flap, double radians)
{
    insist(radians >= 0.0 && radians <= 0.5 * std::numbers::pi, "a flap opens between hanging and level");
    const double sine = steady::sin(radians);
    return flap.width * flap.length * sine + flap.length * flap.length * (sine * std::max(0.0, steady::cos(radians)));
}

Area leak_area(const Flap& flap, Area slit, Pressure away_from_frame)
{
    const std::array openings{slit, gap_area(flap, opening_angle(flap, away_from_frame))};
    return std::max(slit * sealed_share, series_area(openings));
}

Inertia inertia(const Flap& flap) { return (flap.sheet / 3.0 + flap.dowel) * flap.length * flap.length; }

Inertia air_inertia(const Flap& flap, Density air)
{
    return air * flap.width * flap.width * flap.length * flap.length * flap.length * (std::numbers::pi / 12.0);
}

Time swing_period(const Flap& flap, Inertia about_top)
{
    insist(about_top.si > 0.0, "what swings has inertia");
    return {2.0 * std::numbers::pi * std::sqrt(about_top.si / weight_moment(flap).si)};
}

}
