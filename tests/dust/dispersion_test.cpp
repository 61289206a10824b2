#include "dust/dispersion.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("what falls by gravity alone does not stick a second time")
{
    CHECK(sticking_probability(Speed{3e-3}, Speed{3e-3}, 1.0_s, resting_room) == 0.0);
    CHECK(sticking_probability(Speed{1e-3}, Speed{3e-3}, 1.0_s, resting_room) == 0.0);
}

TEST_CASE("sticking grows with the step and stops at certainty")
{
    const double once = sticking_probability(Speed{1e-3}, {}, 0.1_s, 0.05_m2ps);
    CHECK(once == Approx(1e-3 * std::sqrt(std::numbers::pi * 0.1 / 0.05)));
    CHECK(sticking_probability(Speed{1e-3}, {}, 0.4_s, 0.05_m2ps) == Approx(2.0 * once));
    CHECK(sticking_probability(Speed{10.0}, {}, 1.0_s, resting_room) == 1.0);
}
