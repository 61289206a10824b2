#include "air/crack_penetration.hpp"
#include "air/doorway.hpp"
#include "air/leak.hpp"
#include "air/passage.hpp"
#include "air/stack.hpp"
#include "dust/settling.hpp"
#include "row.hpp"

using namespace flapdoor;
using air::Air;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto orifice_law = "recomputed from the orifice law (ASHRAE Handbook Fundamentals, from memory)";
constexpr auto power_law = "recomputed from the power law (ASHRAE Handbook Fundamentals, from memory)";

const Density room_air = air::density(Air{});

double orifice(double area, double pascals) { return air::flow(air::leak_of({Area{area}, 0.6}, room_air), Pressure{pascals}).si; }
double seam(double pascals) { return air::flow({.at_one_pascal = {0.01}, .exponent = 0.65}, Pressure{pascals}).si; }
double stack(double height, double inside, double outside)
{
    return air::stack_pressure({.temperature = celsius(inside)}, {.temperature = celsius(outside)}, Length{height}).si;
}
double door(double kelvins, double discharge)
{
    return air::exchange_flow({.discharge = discharge}, {.temperature = celsius(20.0 + kelvins)}, {}).si;
}
double passage(double exhaust_per_hour)
{
    const Area doorway = 1.9_m2;
    return air::passage_volume(air::hinged_door_passage, AirFlow{exhaust_per_hour / 3600.0} / doorway).si;
}

}

TEST_CASE("leaks pass what the orifice and power laws say")
{
    const air::Leak power{.at_one_pascal = {0.01}, .exponent = 0.65};
    check({
        Row{"P-065 0.01 m2 at 4 Pa", orifice(0.01, 4), 0.01547, 2e-3, orifice_law},
        Row{"P-065 0.01 m2 at 10 Pa", orifice(0.01, 10), 0.02445, 2e-3, orifice_law},
        Row{"P-066 power law at 4 Pa", seam(4), 0.02462, 1e-3, power_law},
        Row{"P-066 power law at 10 Pa", seam(10), 0.04467, 1e-3, power_law},
        Row{"P-066 power law at 50 Pa", seam(50), 0.1272, 1e-3, power_law},
        Row{"P-067 leakage area at 4 Pa", air::equivalent_leakage_area(power, room_air).si, 9.55e-3, 5e-3, power_law},
        Row{"P-069 undercut of 0.8 m x 13 mm at 1 Pa, m3/h", orifice(0.8 * 0.013, 1) * 3600, 29.0, 0.01, orifice_law},
        Row{"P-086 0.02 m2 at 5 Pa, m3/h", orifice(0.02, 5) * 3600, 124.5, 5e-3, orifice_law},
    });
}

TEST_CASE("warm air pushes as its weight says")
{
    constexpr auto source = "recomputed from the ideal gas law";
    check({
        Row{"P-070 5 m, 20 C in, 0 C out", stack(5, 20, 0), 4.32, 0.01, source},
        Row{"P-071 2.5 m, 20 and 10 C", stack(2.5, 20, 10), 1.04, 0.01, source},
        Row{"P-071 2.5 m, 22 and 20 C", stack(2.5, 22, 20), 0.200, 0.01, source},
    });
}

TEST_CASE("an open doorway exchanges air both ways")
{
    constexpr auto source = "recomputed from the orifice law integrated over the height";
    constexpr auto measured = "recomputed with the discharge coefficient of Wilson & Kiel 1990 (from memory)";
    check({
        Row{"P-072 1 K", door(1, 0.65), 0.101, 0.01, source},
        Row{"P-072 2 K", door(2, 0.65), 0.143, 0.01, source},
        Row{"P-072 5 K", door(5, 0.65), 0.226, 0.01, source},
        Row{"P-073 2 K", door(2, air::discharge_at(2)), 0.0898, 0.01, measured},
        Row{"P-073 5 K", door(5, air::discharge_at(5)), 0.147, 0.01, measured},
    });
    const double correction = air::discharge_at(10) / 0.65;
    check({
        RangeRow{"P-075 measured over ideal exchange at 10 K", correction, 0.5, 0.8, "Pham & Oliver 1983, AIVC record: 0.68"},
        RangeRow{"P-076 left behind loose strips", air::loose_curtain_share, 0.03, 0.2, "Pham & Oliver 1983, AIVC record: 0.07"},
    });
}

TEST_CASE("a person walking through moves the measured volumes")
{
    constexpr auto doors = "Kalliomaki 2021, thesis abstract: 0.27 to 2.42 m3";
    constexpr auto rooms = "Hayden et al., NIOSH record 20031962: 1.0 to 1.8 m3 over 85 to 374 m3/h";
    check({
        RangeRow{"P-082 flap door", air::flap_passage.si, 0.27, 2.42, doors},
        RangeRow{"P-082 hinged door", air::hinged_door_passage.si, 0.27, 2.42, doors},
        RangeRow{"P-083 85 m3/h net exhaust", passage(85), 1.0, 1.85, rooms},
        RangeRow{"P-083 374 m3/h net exhaust", passage(374), 0.95, 1.8, rooms},
    });
    check({Row{"P-115 swept by a leaf of 0.9 x 2.0 m", air::swept_volume(0.9_m, 2.0_m).si, 1.27, 2e-3, "recomputed, quarter circle"}});
}

TEST_CASE("fine dust comes through cracks")
{
    constexpr auto source = "Liu & Nazaroff 2003, abstract: near 1 for 0.1-1 um at 0.25 mm and 4 Pa";
    const auto through = [](double um, double gap, double pascals) {
        return air::crack_penetration({.height = Length{gap}, .depth = 4.5_cm}, dust::settling_speed(um * 1.0_um, {}), Pressure{pascals},
                                      {});
    };
    check({
        RangeRow{"P-085 0.1 um, 0.25 mm, 4 Pa", through(0.1, 0.25e-3, 4), 0.9, 1.0, source},
        RangeRow{"P-085 0.5 um, 0.25 mm, 4 Pa", through(0.5, 0.25e-3, 4), 0.9, 1.0, source},
        RangeRow{"P-085 0.5 um, 1 mm, 10 Pa", through(0.5, 1e-3, 10), 0.9, 1.0, source},
    });
    check({Row{"1 um, 0.25 mm, 4 Pa: the formula is known to be low here", through(1, 0.25e-3, 4), 0.76, 0.01,
               "recomputed from the laminar crack formula"}});
}
