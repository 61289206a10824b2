#include "mechanics/doorway_section.hpp"
#include "row.hpp"

#include <cmath>
#include <numbers>

using namespace flapdoor;
using namespace flapdoor::mechanics;
using published::check;
using published::Row;

namespace {

constexpr auto statics = "recomputed from the weights' moment about the top edge";
constexpr auto pendulum = "recomputed from the physical pendulum";
constexpr Density air{1.204};

/// 6 mil polyethylene, 2 m by 1 m, that does not bend.
HangingSheet rigid(Mass dowel, Density around)
{
    HangingSheet sheet = whole_sheet(2.1_m, 2.0_m, 1.0_m, Loading{0.14}, dowel, around);
    sheet.drag = {};
    sheet.links = 1;
    return sheet;
}

/// Mean of the first whole swings about the vertical, let go at 3 degrees.
double period(const HangingSheet& sheet, int swings)
{
    DoorwaySection section;
    const std::size_t hung = section.hang_tilted(sheet, 3.0 * std::numbers::pi / 180.0);
    double first = 0.0;
    double last = 0.0;
    double x = section.shape(hung).back().x.si;
    for (int crossings = 0; crossings <= 2 * swings;) {
        const double before = section.now().si;
        section.advance();
        const double next = section.shape(hung).back().x.si;
        if ((x < 0.0) != (next < 0.0)) {
            last = before + (section.now().si - before) * x / (x - next);
            if (crossings++ == 0) first = last;
        }
        x = next;
    }
    return (last - first) / swings;
}

/// Hem of a sheet that has come to rest under a pressure, from the vertical below its upper edge.
SectionPoint hem_at_rest(const HangingSheet& sheet, Pressure pressure)
{
    DoorwaySection section;
    const std::size_t hung = section.hang(sheet);
    section.press(hung, pressure);
    section.brake(Rate{5.0});
    while (section.now() < 12.0_s) section.advance();
    return section.shape(hung).back();
}

double holds_5_degrees(double dowel)
{
    // The sine of the angle grows with the pressure.
    const HangingSheet sheet = rigid(Mass{dowel}, {});
    const double tried = 0.3;
    return tried * std::sin(5.0 * std::numbers::pi / 180.0) / (hem_at_rest(sheet, Pressure{tried}).x / sheet.length);
}

}

TEST_CASE("a dowel-weighted sheet hangs and swings in the section by its weights")
{
    DoorwaySection section;
    const std::size_t hung = section.hang(rigid(0.25_kg, {}));
    check({
        Row{"P-077 inertia", section.inertia(hung).si, 1.373, 1e-3, statics},
        Row{"P-077 weight moment", section.weight_moment(hung).si, 7.646, 1e-3, statics},
        Row{"P-078 period in a vacuum", period(rigid(0.25_kg, {}), 3), 2.662, 2e-3, pendulum},
        Row{"P-078 period with the air it moves", period(rigid(0.25_kg, air), 3), 4.484, 2e-3, pendulum},
        Row{"P-079 uniform sheet alone", period(rigid({}, {}), 3), 2.317, 1e-3, "theory: 2 pi sqrt(2 L/3 g)"},
        Row{"P-079 point mass at 2 m", period(rigid(1000.0_kg, {}), 3), 2.837, 1e-3, "theory: 2 pi sqrt(L/g)"},
    });
}

TEST_CASE("a fraction of a pascal opens a rigid flap (P-081)")
{
    check({
        Row{"P-081 no dowel", holds_5_degrees(0), 0.12, 0.01, statics},
        Row{"P-081 dowel of 0.25 kg", holds_5_degrees(0.25), 0.33, 0.015, statics},
        Row{"P-081 dowel of 0.5 kg", holds_5_degrees(0.5), 0.55, 0.01, statics},
        Row{"P-081 dowel of 1 kg", holds_5_degrees(1), 0.97, 0.01, statics},
    });
}

TEST_CASE("a sheet of links hangs and swings like a chain")
{
    HangingSheet chain = rigid({}, {});
    chain.links = 24;
    HangingSheet weighted = rigid(0.25_kg, {});
    weighted.links = 24;
    // Tension at s above the hem is g (m + w s); the slope there is p W s over it, and its integral from hem to top is how far
    // the hem stands out, for small slopes.
    const double weight = weighted.film.si;
    const double share = weighted.dowel.si / weight;
    const double out = 0.05 * 1.0 / (gravity.si * weight) * (2.0 - share * std::log(1.0 + 2.0 / share));
    check({
        // The first zero of the Bessel function J0 is 2.40483.
        Row{"period of a hanging chain", period(chain, 20), 4.0 * std::numbers::pi / 2.40483 * std::sqrt(2.0 / gravity.si), 0.01,
            "theory: Daniel Bernoulli's hanging chain, lowest mode"},
        Row{"hem under 0.05 Pa", hem_at_rest(weighted, 0.05_Pa).x.si, out, 0.01, "recomputed from the tension of a weighted chain"},
    });
}
