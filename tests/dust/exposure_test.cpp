#include "dust/exposure.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("dust that reaches deeper is part of the dust that reaches less deep")
{
    for (const double um : {0.5, 1.0, 4.0, 10.0, 30.0, 99.0, 200.0}) {
        const Length size = um * 1.0_um;
        CHECK(respirable_share(size) <= thoracic_share(size));
        CHECK(thoracic_share(size) <= inhalable_share(size));
    }
    CHECK(inhalable_share(150.0_um) == 0.0);
}

TEST_CASE("twenty times the ventilation clears the room, and nothing of what the near field adds")
{
    const MassRate source{1e-6 / 60.0};
    CHECK(far_field(source, 1200.0_m3ph).si == Approx(0.05 * far_field(source, 60.0_m3ph).si));
    CHECK((near_field(source, 60.0_m3ph) - far_field(source, 60.0_m3ph)).si ==
          Approx((near_field(source, 1200.0_m3ph) - far_field(source, 1200.0_m3ph)).si));
}

TEST_CASE("a limit never reached takes the whole shift")
{
    CHECK(time_to_reach(lead_limit, Concentration{10e-9}) == 8.0_h);
    CHECK(time_to_reach(lead_limit, {}) == 8.0_h);
    CHECK(time_to_reach(lead_limit, Concentration{100e-9}) == 4.0_h);
}

TEST_CASE("a stirred room reaches the balance of source and loss")
{
    const MassRate source{1e-9};
    const Rate loss{1e-3};
    CHECK(build_up(source, 30.0_m3, loss, 10.0_h).si == Approx(1e-9 / (30.0 * 1e-3)));
    CHECK(build_up(source, 30.0_m3, loss, {}).si == 0.0);
    CHECK(share_leaving({}, Speed{1e-3}, 2.5_m) == 0.0);
}

TEST_CASE("a puff close by adds its mass over the exchange, however long it takes")
{
    const AirFlow exchange{10.0 / 60.0};
    const MassRate source{1e-6 / 60.0};     // 1 mg/min
    const Dose over_an_hour = dose_of_puff(source * 1.0_h, exchange);
    CHECK((over_an_hour / 1.0_h).si == Approx((near_field(source, 60.0_m3ph, exchange) - far_field(source, 60.0_m3ph)).si));
    CHECK(eight_hour_average(over_an_hour).si == Approx((over_an_hour / 8.0_h).si));
    CHECK_THROWS_AS(dose_of_puff(Mass{-1.0}, exchange), BrokenPromise);
}
