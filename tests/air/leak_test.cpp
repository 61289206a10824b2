#include "air/leak.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>

using namespace flapdoor;
using namespace flapdoor::air;

TEST_CASE("a leak flows as much one way as the other")
{
    const Leak leak{.at_one_pascal = {0.01}, .exponent = 0.65};
    for (const double pascals : {0.001, 0.01, 0.5, 4.0, 50.0})
        CHECK(flow(leak, Pressure{-pascals}).si == -flow(leak, Pressure{pascals}).si);
    CHECK(flow(leak, {}).si == 0.0);
}

TEST_CASE("a leak is straight near zero and joins its power law without a jump")
{
    const Leak leak{.at_one_pascal = {0.01}, .exponent = 0.5};
    CHECK(flow(leak, Pressure{0.005}).si == Approx(0.5 * flow(leak, Pressure{0.01}).si));
    CHECK(flow(leak, Pressure{0.01}).si == Approx(0.001));
    CHECK(flow(leak, Pressure{0.0099999}).si == Approx(0.001).epsilon(1e-4));
}

TEST_CASE("the slope of a leak is that of its flow")
{
    const Leak leak{.at_one_pascal = {0.02}, .exponent = 0.7};
    for (const double pascals : {-3.0, -0.004, 0.002, 0.3, 12.0}) {
        const double h = 1e-6;
        const double measured = (flow(leak, Pressure{pascals + h}).si - flow(leak, Pressure{pascals - h}).si) / (2.0 * h);
        CHECK(slope(leak, Pressure{pascals}) == Approx(measured).epsilon(1e-5));
    }
}

TEST_CASE("holes in a row are tighter than the tightest, and shut when one is shut")
{
    const std::array equal{Area{0.01}, Area{0.01}};
    CHECK(series_area(equal).si == Approx(0.01 / std::sqrt(2.0)));
    const std::array shut{Area{0.01}, Area{}};
    CHECK(series_area(shut).si == 0.0);
}

TEST_CASE("a leak outside the law's exponents breaks a promise")
{
    CHECK_THROWS_AS(flow({.at_one_pascal = {0.01}, .exponent = 0.3}, 1.0_Pa), BrokenPromise);
    CHECK_THROWS_AS(leak_of({Area{}, 0.6}, 1.2_kgpm3), BrokenPromise);
}
