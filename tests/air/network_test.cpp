#include "air/network.hpp"

#include "air/air_properties.hpp"
#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <array>
#include <cmath>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::air;

namespace {

const Density room_air = density(Air{});

Link hole(ZoneIndex from, ZoneIndex to, double area, Pressure drive = {})
{
    return {.from = from, .to = to, .leak = leak_of({Area{area}, 0.6}, room_air), .drive = drive};
}

/// Air that stays behind in a zone at the answer, m3/s.
double imbalance(const Network& network, const NetworkFlows& flows, ZoneIndex zone)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < network.links.size(); ++i) {
        if (network.links[i].to == zone) sum += flows.flow[i].si;
        if (network.links[i].from == zone) sum -= flows.flow[i].si;
    }
    for (const Fan& fan : network.fans) {
        if (fan.to == zone) sum += fan.flow.si;
        if (fan.from == zone) sum -= fan.flow.si;
    }
    return sum;
}

}

TEST_CASE("a fan that draws on one room pulls it to the pressure of its only leak")
{
    const Network network{.zones = 1, .links = {hole(outdoors, 0, 0.02)}, .fans = {{.from = 0, .to = outdoors, .flow = 124.5_m3ph}}};
    const auto flows = solve(network);
    REQUIRE(flows);
    CHECK(flows->pressure[0].si == Approx(-5.0).epsilon(2e-3));   // 0.02 m2 at 5 Pa passes 124.5 m3/h
    CHECK(flows->flow[0].si == Approx(124.5 / 3600.0));
}

TEST_CASE("two leaks in a row pass what one series hole passes")
{
    const Network network{.zones = 1, .links = {hole(outdoors, 0, 0.01, 4.0_Pa), hole(0, outdoors, 0.02)}, .fans = {}};
    const auto flows = solve(network);
    REQUIRE(flows);
    const std::array holes{Area{0.01}, Area{0.02}};
    const AirFlow through = flow(leak_of({series_area(holes), 0.6}, room_air), 4.0_Pa);
    CHECK(flows->flow[0].si == Approx(through.si).epsilon(1e-6));
    CHECK(flows->flow[1].si == Approx(through.si).epsilon(1e-6));
    CHECK(flows->pressure[0].si == Approx(4.0 / 5.0).epsilon(1e-6));   // (A1/A2)^2 = 1/4 of the rest lies across the larger
}

TEST_CASE("power leaks of different exponents meet in the analytic pressure")
{
    // n = 1 in series with n = 0.5: 0.01 p + 0.01 sqrt(p) splits 6 Pa at sqrt(p) = 2, p = 4 and 2 Pa over the straight one.
    const Network network{.zones = 1,
                          .links = {{.from = outdoors, .to = 0, .leak = {AirFlow{0.01}, 1.0}, .drive = 6.0_Pa},
                                    {.from = 0, .to = outdoors, .leak = {AirFlow{0.01}, 0.5}, .drive = {}}},
                          .fans = {}};
    const auto flows = solve(network);
    REQUIRE(flows);
    CHECK(flows->pressure[0].si == Approx(4.0).epsilon(1e-6));
    CHECK(flows->flow[0].si == Approx(0.02).epsilon(1e-6));
}

TEST_CASE("mirror-image rooms get mirror-image pressures")
{
    const Network network{.zones = 3,
                          .links = {hole(outdoors, 0, 0.01), hole(0, 1, 0.02), hole(1, 2, 0.02), hole(2, outdoors, 0.01)},
                          .fans = {{.from = outdoors, .to = 1, .flow = 100.0_m3ph}}};
    const auto flows = solve(network);
    REQUIRE(flows);
    CHECK(flows->pressure[0].si == Approx(flows->pressure[2].si).epsilon(1e-6));
    CHECK(flows->pressure[1] > flows->pressure[0]);
    CHECK(flows->flow[3].si == Approx(50.0 / 3600.0).epsilon(1e-6));
}

TEST_CASE("supply left on with the return covered pushes air out of every leak")
{
    const Network network{.zones = 2,
                          .links = {hole(0, outdoors, 0.005), hole(0, 1, 0.01), hole(1, outdoors, 0.02)},
                          .fans = {{.from = outdoors, .to = 0, .flow = 150.0_m3ph}}};
    const auto flows = solve(network);
    REQUIRE(flows);
    CHECK(flows->pressure[0] > flows->pressure[1]);
    CHECK(flows->pressure[1].si > 0.0);
    for (const AirFlow out : flows->flow) CHECK(out.si > 0.0);
}

TEST_CASE("a link that seals backward passes less that way")
{
    Network network{.zones = 1, .links = {hole(0, outdoors, 0.01)}, .fans = {{.from = 0, .to = outdoors, .flow = 36.0_m3ph}}};
    const Pressure open = solve(network)->pressure[0];
    network.links[0].backward = {{Pressure{}, 0.3}};
    const Pressure sealing = solve(network)->pressure[0];
    CHECK(sealing.si == Approx(open.si / (0.3 * 0.3)).epsilon(1e-6));
}

TEST_CASE("air that pushes a flap open gets through it ever more easily, and shuts it on its way back")
{
    Link flap = hole(0, outdoors, 0.02);
    flap.forward = {{Pressure{}, 0.1}, {1.0_Pa, 0.6}, {2.0_Pa, 1.0}};
    flap.backward = {{Pressure{}, 0.1}};
    CHECK(flow(flap, 0.5_Pa).si == Approx(flow(flap.leak, 0.5_Pa).si * 0.35));
    CHECK(flow(flap, 1.5_Pa).si == Approx(flow(flap.leak, 1.5_Pa).si * 0.8));
    CHECK(flow(flap, 9.0_Pa).si == Approx(flow(flap.leak, 9.0_Pa).si));
    CHECK(flow(flap, Pressure{-9.0}).si == Approx(-0.1 * flow(flap.leak, 9.0_Pa).si));

    Network network{.zones = 1, .links = {flap}, .fans = {{.from = outdoors, .to = 0, .flow = 36.0_m3ph}}};
    const Pressure pushed = solve(network)->pressure[0];
    network.fans[0].flow = -36.0_m3ph;
    const Pressure drawn = solve(network)->pressure[0];
    CHECK(-drawn > pushed * 5.0);
    network.links[0].forward = {{Pressure{}, 0.6}, {1.0_Pa, 0.1}};
    CHECK_THROWS_AS(solve(network), BrokenPromise);
}

TEST_CASE("nothing drives air where nothing pushes")
{
    const auto flows = solve({.zones = 2, .links = {hole(outdoors, 0, 0.01), hole(0, 1, 0.02)}, .fans = {}});
    REQUIRE(flows);
    CHECK(flows->flow[0].si == 0.0);
    CHECK(flows->flow[1].si == 0.0);
    CHECK(flows->iterations == 0);
}

TEST_CASE("a fan into sealed zones is refused, and the zones are named")
{
    const Network network{
        .zones = 3, .links = {hole(1, 2, 0.01), hole(0, outdoors, 0.01)}, .fans = {{.from = outdoors, .to = 2, .flow = 36.0_m3ph}}};
    const auto flows = solve(network);
    REQUIRE_FALSE(flows);
    CHECK(flows.error().zones == std::vector<ZoneIndex>{1, 2});
    CHECK(flows.error().surplus.si == Approx(0.01));
}

TEST_CASE("sealed zones whose fans cancel are solved")
{
    const Network network{.zones = 2,
                          .links = {hole(0, 1, 0.01)},
                          .fans = {{.from = outdoors, .to = 0, .flow = 36.0_m3ph}, {.from = 1, .to = outdoors, .flow = 36.0_m3ph}}};
    const auto flows = solve(network);
    REQUIRE(flows);
    CHECK(flows->flow[0].si == Approx(0.01).epsilon(1e-6));
}

TEST_CASE("a link to nowhere breaks a promise")
{
    CHECK_THROWS_AS(solve({.zones = 1, .links = {hole(0, 1, 0.01)}, .fans = {}}), BrokenPromise);
    CHECK_THROWS_AS(solve({.zones = 1, .links = {hole(0, 0, 0.01)}, .fans = {}}), BrokenPromise);
}

TEST_CASE("what flows into each zone flows out of it, whatever the house", "[property]")
{
    CHECK(rc::check([] {
        Network network{.zones = *rc::gen::inRange<std::size_t>(1, 7), .links = {}, .fans = {}};
        const auto any_zone = [&] { return *rc::gen::inRange<std::size_t>(0, network.zones); };
        const auto decade = [](int low, int high) { return std::pow(10.0, *rc::gen::inRange(low * 10, high * 10) / 10.0); };
        for (ZoneIndex zone = 0; zone < network.zones; ++zone) network.links.push_back(hole(zone, outdoors, decade(-5, -1)));
        for (int i = *rc::gen::inRange(0, 10); i-- > 0;) {
            const ZoneIndex from = any_zone();
            const ZoneIndex to = any_zone();
            if (from == to) continue;
            const Pressure drive{*rc::gen::inRange(-100, 100) / 20.0};
            network.links.push_back({.from = from,
                                     .to = to,
                                     .leak = {AirFlow{decade(-5, 0)}, *rc::gen::inRange(50, 101) / 100.0},
                                     .drive = drive,
                                     .forward = {{Pressure{}, *rc::gen::inRange(1, 51) / 100.0}, {Pressure{*rc::gen::inRange(1, 50) / 10.0}, *rc::gen::inRange(51, 101) / 100.0}},
                                     .backward = {{Pressure{}, *rc::gen::inRange(10, 101) / 100.0}}});
        }
        for (int i = *rc::gen::inRange(0, 4); i-- > 0;)
            network.fans.push_back({.from = outdoors, .to = any_zone(), .flow = AirFlow{*rc::gen::inRange(-80, 80) / 1000.0}});

        const auto flows = solve(network);
        RC_ASSERT(flows.has_value());
        for (ZoneIndex zone = 0; zone < network.zones; ++zone) RC_ASSERT(std::fabs(imbalance(network, *flows, zone)) < 2e-9);
        RC_ASSERT(flows->iterations < 60);
    }));
}
