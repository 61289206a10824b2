#include "air/flap.hpp"

#include <catch2/catch.hpp>

#include <numbers>

using namespace flapdoor;
using namespace flapdoor::air;

namespace {

constexpr Area slit{0.005};

}

TEST_CASE("a flap stands at the angle whose weight balances the pressure")
{
    const Flap flap;
    for (const double degrees : {1.0, 5.0, 30.0, 60.0}) {
        const double radians = degrees * std::numbers::pi / 180.0;
        CHECK(opening_angle(flap, pressure_to_hold(flap, radians)) == Approx(radians).epsilon(1e-9));
    }
    CHECK(pressure_to_hold(flap, std::numbers::pi / 6.0).si == Approx(1.9).epsilon(0.02));
    CHECK(opening_angle(flap, 100.0_Pa) == Approx(0.5 * std::numbers::pi));
}

TEST_CASE("pressure toward the frame keeps a flap shut")
{
    const Flap flap;
    CHECK(opening_angle(flap, Pressure{-50.0}) == 0.0);
    CHECK(leak_area(flap, slit, Pressure{-50.0}).si == Approx(0.3 * slit.si));
    CHECK(leak_area(flap, slit, {}).si == Approx(0.3 * slit.si));
}

TEST_CASE("pressure away from the frame opens a flap up to its slit")
{
    const Flap flap;
    const Area blown_open = leak_area(flap, slit, 5.0_Pa);
    CHECK(blown_open.si > 0.99 * slit.si);
    CHECK(blown_open < slit);
    CHECK(leak_area(flap, slit, Pressure{0.01}) < blown_open);
}

TEST_CASE("without its dowel a flap opens for less than half the pressure")
{
    const double radians = 0.1;
    CHECK(pressure_to_hold({.dowel = {}}, radians).si < 0.5 * pressure_to_hold({}, radians).si);
}
