#include "air/crack_penetration.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::air {

Speed crack_speed(const Crack& crack, Pressure difference, const Air& air)
{
    insist(crack.height.si > 0.0 && crack.depth.si > 0.0, "a crack has a height and a depth");
    insist(difference.si > 0.0, "air needs a pressure difference to go through a crack");
    const double friction = 12.0 * viscosity(air).si * crack.depth.si / (crack.height.si * crack.height.si);
    const double ends = 0.75 * density(air).si;
    // The form of the root that does not cancel when friction rules.
    return {2.0 * difference.si / (friction + std::sqrt(friction * friction + 4.0 * ends * difference.si))};
}

double crack_penetration(const Crack& crack, Speed settling, Pressure difference, const Air& air)
{
    const Speed through = crack_speed(crack, difference, air);
    return std::clamp(1.0 - (settling / through) * (crack.depth / crack.height), 0.0, 1.0);
}

}
