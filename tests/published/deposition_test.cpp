#include "dust/deposition.hpp"
#include "dust/fan_loss.hpp"
#include "row.hpp"

#include <cmath>

using namespace flapdoor;
using dust::DepositionSpeeds;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto lai = "recomputed from Lai & Nazaroff 2000 (equations from memory, checked by integration)";
constexpr auto house = "measured in a furnished townhouse (Howard-Reed, Wallace & Emmerich), abstract";

constexpr Speed calm{0.01};
constexpr Speed brisk{0.03};

double resistance(double um) { return dust::boundary_resistance(um * 1.0_um, calm, {}); }
DepositionSpeeds speeds(double um, Speed friction) { return dust::smooth_room_deposition(um * 1.0_um, friction, {}); }

double loss_per_hour(double um)
{
    const dust::RoomSurfaces room{.floor = 12.0_m2, .wall = 35.0_m2, .ceiling = 12.0_m2, .volume = 30.0_m3};
    return dust::room_loss_rate(speeds(um, calm), room).si * 3600.0;
}

double furnished_per_hour(double um) { return dust::furnished_loss_rate(Rate{loss_per_hour(um) / 3600.0}, 1.5).si * 3600.0; }

}

TEST_CASE("a smooth room takes up dust as the three-layer model says")
{
    check({
        Row{"P-033 resistance at 0.01 um", resistance(0.01), 576.6, 3e-3, lai},
        Row{"P-033 resistance at 0.1 um", resistance(0.1), 1.0506e4, 3e-3, lai},
        Row{"P-033 resistance at 1 um", resistance(1), 8.887e4, 3e-3, lai},
        Row{"P-033 resistance at 10 um", resistance(10), 4.295e5, 3e-3, lai},
        Row{"P-034 wall at 0.1 um", speeds(0.1, calm).wall.si, 9.52e-7, 0.01, lai},
        Row{"P-034 floor at 0.1 um", speeds(0.1, calm).floor.si, 1.441e-6, 0.01, lai},
        Row{"P-034 ceiling at 0.1 um", speeds(0.1, calm).ceiling.si, 5.88e-7, 0.01, lai},
        Row{"P-035 wall at 1 um", speeds(1, calm).wall.si, 1.125e-7, 0.01, lai},
        Row{"P-035 floor at 1 um", speeds(1, calm).floor.si, 3.456e-5, 0.01, lai},
        Row{"P-036 wall at 10 um", speeds(10, calm).wall.si, 2.33e-8, 0.01, lai},
        Row{"P-036 floor at 10 um", speeds(10, calm).floor.si, 3.038e-3, 0.01, lai},
        Row{"P-037 wall at 0.1 um, u* 3 cm/s", speeds(0.1, brisk).wall.si, 2.856e-6, 0.01, lai},
        Row{"P-037 floor at 0.1 um, u* 3 cm/s", speeds(0.1, brisk).floor.si, 3.304e-6, 0.01, lai},
        Row{"P-037 ceiling at 0.1 um, u* 3 cm/s", speeds(0.1, brisk).ceiling.si, 2.450e-6, 0.01, lai},
        Row{"P-039 room loss at 0.3 um, 1/h", loss_per_hour(0.3), 0.0072, 0.01, lai},
        Row{"P-039 room loss at 1 um, 1/h", loss_per_hour(1), 0.0502, 0.01, lai},
        Row{"P-039 room loss at 5 um, 1/h", loss_per_hour(5), 1.111, 0.01, lai},
        Row{"P-039 room loss at 10 um, 1/h", loss_per_hour(10), 4.375, 0.01, lai},
    });
    check({RangeRow{"P-035 ceiling at 1 um", speeds(1, calm).ceiling.si, 0.0, 1e-100, lai}});
}

TEST_CASE("the outer layer's resistance is the integral of the eddy viscosity it stands for")
{
    // 1/nu_t+ of the model: 1000 y^-2.8214 to 12.5 wall units, y^-1.8895/0.0107 to 30; midpoint rule.
    double resistance = 0.0;
    const int strips = 20000;
    const double width = (30.0 - 4.3) / strips;
    for (int i = 0; i < strips; ++i) {
        const double y = 4.3 + (i + 0.5) * width;
        resistance += width * (y < 12.5 ? 1000.0 * std::pow(y, -2.8214) : std::pow(y, -1.8895) / 0.0107);
    }
    check({
        Row{"P-032 the integral", resistance, 39.02, 1e-3, lai},
        Row{"P-032 the constant in use", dust::outer_layer_resistance, resistance, 1e-3, lai},
    });
}

TEST_CASE("the resistance is the integral it is the closed form of, for any size and stirring")
{
    for (const double um : {0.01, 1.0, 10.0, 100.0, 300.0})
        for (const Speed friction : {calm, brisk}) {
            CAPTURE(um, friction.si);
            // Inner layer, 1/(nu_t+ + 1/Sc) from the particle's radius to 4.3 wall units, in equal steps of ln y.
            const double schmidt = dust::schmidt_number(um * 1.0_um, {});
            const double radius = 0.5 * um * 1e-6 * friction.si / air::kinematic_viscosity({}).si;
            const int strips = 20000;
            const double ratio = std::pow(4.3 / radius, 1.0 / strips);
            double resistance = 0.0;
            for (int i = 0; i < strips; ++i) {
                const double y = radius * std::pow(ratio, i + 0.5);
                resistance += y * std::log(ratio) / (7.669e-4 * y * y * y + 1.0 / schmidt);
            }
            check({Row{"Lai & Nazaroff 2000", dust::boundary_resistance(um * 1.0_um, friction, {}), resistance + 39.0, 2e-3, lai}});
        }
}

TEST_CASE("floor and ceiling differ by the settling speed (P-040)")
{
    for (const double um : {0.01, 0.1, 0.3, 1.0, 3.0, 10.0, 50.0, 200.0}) {
        CAPTURE(um);
        const DepositionSpeeds here = speeds(um, calm);
        const double settling = dust::settling_speed(um * 1.0_um, {}).si;
        CHECK((here.floor - here.ceiling).si == Approx(settling).epsilon(1e-9));
    }
}

TEST_CASE("a lived-in room loses dust within twice what was measured in one")
{
    check({
        RangeRow{"P-041 0.3 um, furnishing 1.5, 1/h", furnished_per_hour(0.3), 0.3 / 2, 0.3 * 2, house},
        RangeRow{"P-041 0.5 um, furnishing 1.5, 1/h", furnished_per_hour(0.5), 0.3 / 2, 0.3 * 2, house},
        RangeRow{"P-041 10 um, furnishing 1.5, 1/h", furnished_per_hour(10), 5.2 / 2, 5.2 * 2, house},
    });
}

TEST_CASE("furniture and moving air take up dust faster (P-043; Thatcher et al. 2002, abstract)")
{
    const Rate bare{loss_per_hour(5) / 3600.0};
    const double furnished = dust::furnished_loss_rate(bare, 2.5) / dust::furnished_loss_rate(bare, 1.0);
    check({RangeRow{"P-043 bare to furnished", furnished, 1.0001, 2.6, "Thatcher et al. 2002, abstract: up to x2.6"}});
    CHECK(speeds(0.3, brisk).wall > speeds(0.3, calm).wall);
    CHECK(speeds(0.3, brisk).floor > speeds(0.3, calm).floor);
}

TEST_CASE("a running central fan takes as much again below 5 um and 2/h more of coarser dust, within x1.5 (P-042; Howard-Reed et al., abstract)")
{
    constexpr auto fan = "Howard-Reed, Wallace & Emmerich, abstract: about doubled below 5 um, 2/h more above";
    const auto still = [](double um) { return Rate{furnished_per_hour(um) / 3600.0}; };
    const auto times = [&](double um) { return (still(um) + dust::fan_loss(still(um))) / still(um); };
    const auto more = [&](double um) { return dust::fan_loss(still(um)).si * 3600.0; };
    check({
        RangeRow{"P-042 0.4 um, times", times(0.4), 2.0 / 1.5, 2.0 * 1.5, fan},
        RangeRow{"P-042 1 um, times", times(1), 2.0 / 1.5, 2.0 * 1.5, fan},
        RangeRow{"P-042 2.5 um, times", times(2.5), 2.0 / 1.5, 2.0 * 1.5, fan},
        RangeRow{"P-042 4.9 um, times", times(4.9), 2.0 / 1.5, 2.0 * 1.5, fan},
        RangeRow{"P-042 7 um, more, 1/h", more(7), 2.0 / 1.5, 2.0 * 1.5, fan},
        RangeRow{"P-042 10 um, more, 1/h", more(10), 2.0 / 1.5, 2.0 * 1.5, fan},
    });
}
