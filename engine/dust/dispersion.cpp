#include "dust/dispersion.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flapdoor::dust {

Diffusivity eddy_diffusivity(Volume room, Rate air_change)
{
    insist(room.si > 0.0 && air_change.si >= 0.0, "a room has a volume, and its air does not change backward");
    const double per_hour = air_change.si * 3600.0;
    return {steady::pow(room.si, 2.0 / 3.0) * (0.52 * per_hour + 0.31) / 3600.0};
}

Time mixing_time(Length room, Diffusivity eddy)
{
    insist(eddy.si > 0.0, "still air never mixes");
    return room * room / eddy / (std::numbers::pi * std::numbers::pi);
}

double sticking_probability(Speed deposition, Speed settling, Time step, Diffusivity eddy)
{
    insist(step.si > 0.0 && eddy.si > 0.0, "a step takes time and the air stirs");
    const double beyond_gravity = std::max(0.0, (deposition - settling).si);
    return std::min(1.0, beyond_gravity * std::sqrt(std::numbers::pi * step.si / eddy.si));
}

}
