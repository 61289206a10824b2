#include "air/flap.hpp"
#include "row.hpp"

#include <numbers>

using namespace flapdoor;
using air::Flap;
using published::check;
using published::Row;

namespace {

constexpr auto statics = "recomputed from the weights' moment about the top edge";
constexpr auto pendulum = "recomputed from the physical pendulum";

double holds_5_degrees(double dowel)
{
    return air::pressure_to_hold({.dowel = Mass{dowel}}, 5.0 * std::numbers::pi / 180.0).si;
}

}

TEST_CASE("a dowel-weighted flap hangs and swings by its weights")
{
    const Flap flap;
    const Density air = density(air::Air{});
    const Flap sheet_only{.dowel = {}};
    const Flap point_mass{.sheet = 1e-9_kg, .dowel = 1.0_kg};
    check({
        Row{"P-077 inertia", inertia(flap).si, 1.373, 1e-3, statics},
        Row{"P-077 weight moment", weight_moment(flap).si, 7.646, 1e-3, statics},
        Row{"P-078 period in a vacuum", swing_period(flap, inertia(flap)).si, 2.662, 2e-3, pendulum},
        Row{"P-078 period with the air it moves", swing_period(flap, inertia(flap) + air_inertia(flap, air)).si, 4.484, 2e-3, pendulum},
        Row{"P-079 uniform sheet alone", swing_period(sheet_only, inertia(sheet_only)).si, 2.317, 1e-3, "theory: 2 pi sqrt(2 L/3 g)"},
        Row{"P-079 point mass at 2 m", swing_period(point_mass, inertia(point_mass)).si, 2.837, 1e-3, "theory: 2 pi sqrt(L/g)"},
    });
}

TEST_CASE("a fraction of a pascal opens a flap (P-081)")
{
    check({
        Row{"P-081 no dowel", holds_5_degrees(0), 0.12, 0.01, statics},
        Row{"P-081 dowel of 0.25 kg", holds_5_degrees(0.25), 0.33, 0.015, statics},
        Row{"P-081 dowel of 0.5 kg", holds_5_degrees(0.5), 0.55, 0.01, statics},
        Row{"P-081 dowel of 1 kg", holds_5_degrees(1), 0.97, 0.01, statics},
    });
}
