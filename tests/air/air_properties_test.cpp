#include "air/air_properties.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::air;

TEST_CASE("thin mountain air lets molecules fly a fifth farther")
{
    const Air mountain{.pressure = Pressure{84e3}};
    CHECK(mean_free_path(mountain) / mean_free_path({}) == Approx(101325.0 / 84e3));
    CHECK(viscosity(mountain) == viscosity({}));
}

TEST_CASE("air nobody works in breaks a promise")
{
    CHECK_THROWS_AS(density({.temperature = {200.0}}), BrokenPromise);
    CHECK_THROWS_AS(viscosity({.pressure = Pressure{1e3}}), BrokenPromise);
}
