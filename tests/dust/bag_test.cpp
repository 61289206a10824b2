#include "dust/bag.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("a bag more than two thirds full cannot be twisted and bursts more often")
{
    CHECK(burst_probability({.filled = 0.5}) == 0.01);
    CHECK(burst_probability({.filled = 0.9}) == 0.1);
    CHECK(burst_probability({.filled = 0.9, .has_sharp_debris = true}) == 0.3);
    CHECK(burst_probability({.filled = 0.9, .has_sharp_debris = true, .is_doubled = true}) == 0.1);
    CHECK(pressed_out(0.9) == pressed_out(0.5) * 2.0);
    CHECK_THROWS_AS(pressed_out(1.5), BrokenPromise);
}

TEST_CASE("waiting lets the cloud in the bag settle")
{
    CHECK(still_hanging(Speed{3e-3}, {}, 0.3_m) == 1.0);
    CHECK(still_hanging(Speed{3e-3}, 100.0_s, 0.3_m) == Approx(0.3679).epsilon(1e-3));
}

TEST_CASE("debris set down gently and damp raises the least")
{
    CHECK(head_space_share(Drop::gentle_misted) < head_space_share(Drop::gentle_dry));
    CHECK(head_space_share(Drop::gentle_dry) < head_space_share(Drop::thrown_dry));
}

TEST_CASE("pressing the air out of a fuller bag brings out more of the cloud over its content")
{
    CHECK(pressed_out_share(0.5) == Approx(0.02 / 0.05));
    CHECK(pressed_out_share(0.9) == 1.0);
    CHECK(pressed_out_share(0.6) > pressed_out_share(0.3));
}
