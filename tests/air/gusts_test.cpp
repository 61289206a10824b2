#include "air/gusts.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace flapdoor;
using namespace flapdoor::air;

TEST_CASE("gusts swap air through a leak that has no mean pressure across it")
{
    for (const double exponent : {0.5, 0.65, 1.0}) {
        CAPTURE(exponent);
        const TwoWayFlow swapped = gust_flow({.at_one_pascal = {0.01}, .exponent = exponent}, {}, 1.0_Pa);
        // Half the mean of |x|^n for a standard normal x.
        const double half_moment = 0.5 * std::pow(2.0, exponent / 2.0) * std::tgamma((exponent + 1.0) / 2.0) / std::sqrt(std::numbers::pi);
        CHECK(swapped.out.si == Approx(0.01 * half_moment).epsilon(2e-3));
        CHECK(swapped.in.si == Approx(swapped.out.si).epsilon(1e-12));
    }
}

TEST_CASE("still air through a leak goes one way")
{
    const Leak leak{.at_one_pascal = {0.01}, .exponent = 0.65};
    const TwoWayFlow still = gust_flow(leak, 4.0_Pa, {});
    CHECK(still.out.si == Approx(flow(leak, 4.0_Pa).si));
    CHECK(still.in.si == 0.0);
}

TEST_CASE("a mean pressure well above the gusts lets hardly any air back")
{
    const Leak leak{.at_one_pascal = {0.01}, .exponent = 0.65};
    CHECK(gust_flow(leak, Pressure{-5.0}, 1.0_Pa).out.si < 1e-6 * gust_flow(leak, Pressure{-5.0}, 1.0_Pa).in.si);
    CHECK(gust_flow(leak, Pressure{-1.0}, 1.0_Pa).out.si > 0.05 * gust_flow(leak, Pressure{-1.0}, 1.0_Pa).in.si);
}
