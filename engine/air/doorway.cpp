#include "air/doorway.hpp"

#include "core/insist.hpp"

#include <cmath>

namespace flapdoor::air {

namespace {

double reduced_gravity(const Air& here, const Air& there)
{
    const double a = density(here).si;
    const double b = density(there).si;
    return gravity.si * std::fabs(a - b) / (0.5 * (a + b));
}

double power_three_halves(double x) { return x * std::sqrt(x); }

}

AirFlow exchange_flow(const Doorway& door, const Air& here, const Air& there)
{
    return {door.discharge / 3.0 * door.width.si * power_three_halves(door.height.si) * std::sqrt(reduced_gravity(here, there))};
}

AirFlow suppressing_flow(const Doorway& door, const Air& here, const Air& there)
{
    return exchange_flow(door, here, there) * (2.0 * std::sqrt(2.0));
}

TwoWayFlow doorway_flow(const Doorway& door, const Air& here, const Air& there, AirFlow net)
{
    const AirFlow all = suppressing_flow(door, here, there);
    if (net >= all) return {.out = net, .in = {}};
    if (net <= -all) return {.out = {}, .in = -net};

    // The inflow share of the height, by bisection: outflow above it and inflow below it, each as height^1.5.
    double low = 0.0;
    double high = 1.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        const double surplus = power_three_halves(1.0 - middle) - power_three_halves(middle);
        (all * surplus > net ? low : high) = middle;
    }
    const AirFlow in = all * power_three_halves(0.5 * (low + high));
    return {.out = in + net, .in = in};
}

double discharge_at(double kelvins)
{
    insist(kelvins >= 0.0 && kelvins <= 40.0, "a temperature difference across a doorway is 0 to 40 K");
    return 0.40 + 0.0045 * kelvins;
}

}
