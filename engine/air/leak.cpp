#include "air/leak.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <cmath>

namespace flapdoor::air {

namespace {

AirFlow magnitude(const Leak& leak, Pressure difference)
{
    return leak.at_one_pascal * (leak.exponent == 0.5 ? std::sqrt(difference.si) : steady::pow(difference.si, leak.exponent));
}

}

Leak leak_of(const Orifice& hole, Density air)
{
    insist(hole.area.si > 0.0 && hole.discharge > 0.0 && air.si > 0.0, "a hole has an area and air in it");
    return {.at_one_pascal = {hole.discharge * hole.area.si * std::sqrt(2.0 / air.si)}, .exponent = 0.5};
}

AirFlow flow(const Leak& leak, Pressure difference)
{
    insist(leak.at_one_pascal.si > 0.0 && leak.exponent >= 0.5 && leak.exponent <= 1.0, "a leak flows and its exponent is 0.5 to 1");
    if (difference.si < 0.0) return -flow(leak, -difference);
    if (difference < linear_below) return magnitude(leak, linear_below) * (difference / linear_below);
    return magnitude(leak, difference);
}

double slope(const Leak& leak, Pressure difference)
{
    const Pressure size{std::fabs(difference.si)};
    if (size < linear_below) return magnitude(leak, linear_below).si / linear_below.si;
    return leak.exponent * magnitude(leak, size).si / size.si;
}

Area series_area(std::span<const Area> holes)
{
    insist(!holes.empty(), "a row of holes has at least one");
    double inverse_squares = 0.0;
    for (const Area hole : holes) {
        if (!(hole.si > 0.0)) return {};
        inverse_squares += 1.0 / (hole.si * hole.si);
    }
    return {1.0 / std::sqrt(inverse_squares)};
}

Area equivalent_leakage_area(const Leak& leak, Density air, Pressure reference)
{
    return {flow(leak, reference).si / std::sqrt(2.0 * reference.si / air.si)};
}

}
