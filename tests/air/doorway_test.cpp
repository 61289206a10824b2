#include "air/doorway.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::air;

namespace {

const Air warm{.temperature = celsius(22.0)};
const Air cool{.temperature = celsius(20.0)};

}

TEST_CASE("a doorway without net flow exchanges the same both ways")
{
    const TwoWayFlow flows = doorway_flow({}, warm, cool, {});
    CHECK(flows.in.si == Approx(exchange_flow({}, warm, cool).si).epsilon(1e-9));
    CHECK(flows.out.si == Approx(flows.in.si).epsilon(1e-9));
}

TEST_CASE("net flow through a doorway is the difference of the two flows, and squeezes the counterflow")
{
    AirFlow counterflow = exchange_flow({}, warm, cool);
    const AirFlow all = suppressing_flow({}, warm, cool);
    for (const double share : {0.1, 0.4, 0.8, 0.99}) {
        const TwoWayFlow flows = doorway_flow({}, warm, cool, all * share);
        CHECK(flows.net().si == Approx((all * share).si));
        CHECK(flows.in < counterflow);
        counterflow = flows.in;
        const TwoWayFlow mirrored = doorway_flow({}, warm, cool, all * -share);
        CHECK(mirrored.out.si == Approx(flows.in.si).epsilon(1e-9));
    }
}

TEST_CASE("beyond the suppressing flow a doorway is one-way")
{
    const AirFlow all = suppressing_flow({}, warm, cool);
    CHECK(doorway_flow({}, warm, cool, all * 1.01).in.si == 0.0);
    CHECK(doorway_flow({}, warm, cool, all * -1.01).out.si == 0.0);
    CHECK(all.si / (0.9 * 2.0) == Approx(0.22).epsilon(0.03));   // mean velocity at 2 K, m/s
}

TEST_CASE("a doorway between equal airs exchanges nothing of itself")
{
    CHECK(exchange_flow({}, warm, warm).si == 0.0);
    CHECK(doorway_flow({}, warm, warm, 36.0_m3ph).out.si == Approx(0.01));
}
