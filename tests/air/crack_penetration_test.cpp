#include "air/crack_penetration.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::air;

TEST_CASE("the speed in a crack uses up the whole pressure difference")
{
    for (const double height : {0.1e-3, 1e-3, 10e-3}) {
        const Crack crack{.height = Length{height}, .depth = 4.0_cm};
        const double speed = crack_speed(crack, 4.0_Pa, {}).si;
        const double used = 12.0 * viscosity(Air{}).si * 0.04 * speed / (height * height) + 0.75 * density(Air{}).si * speed * speed;
        CHECK(used == Approx(4.0));
    }
}

TEST_CASE("coarse dust stays in a fine crack and comes through an undercut")
{
    const Speed ten_micrometers{3.04e-3};
    CHECK(crack_penetration({.height = 0.1_mm, .depth = 4.0_cm}, ten_micrometers, 4.0_Pa, {}) == 0.0);
    CHECK(crack_penetration({.height = 10.0_mm, .depth = 4.0_cm}, ten_micrometers, 1.0_Pa, {}) > 0.98);
}
