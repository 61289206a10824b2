#include "dust/lognormal.hpp"

#include "core/insist.hpp"
#include "dust/mixed_zone.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("class shares of a cloud add up to all of it, and none are chips")
{
    for (const Lognormal& sizes : {usual_cloud, Lognormal{150.0_um, 2.5}, Lognormal{1.0_um, 1.2}, Lognormal{30.0_um, 3.0}}) {
        const PerClass<double> shares = dust_shares(sizes);
        CHECK(std::accumulate(shares.begin(), shares.end(), 0.0) == Approx(1.0).epsilon(1e-12));
        CHECK(shares[SizeClass::chips] == 0.0);
        for (const double share : shares) CHECK(share >= 0.0);
    }
}

TEST_CASE("half the usual cloud is finer than its median")
{
    CHECK(share_below(usual_cloud, usual_cloud.median) == Approx(0.5));
    CHECK(share_below(usual_cloud, {}) == 0.0);
    const PerClass<double> shares = dust_shares(usual_cloud);
    CHECK(shares[SizeClass::um_10] > shares[SizeClass::um_2_5]);
    CHECK(shares[SizeClass::um_10] > shares[SizeClass::um_40]);
}

TEST_CASE("the diameter below a share has that share below it")
{
    for (const double share : {0.001, 0.1, 0.5, 0.9, 0.999})
        CHECK(share_below(usual_cloud, diameter_below(usual_cloud, share)) == Approx(share).epsilon(1e-6));
    CHECK_THROWS_AS(diameter_below(usual_cloud, 1.0), BrokenPromise);
}

TEST_CASE("ten typical diameters settle like the whole spread")
{
    const PerClass<double> shares = dust_shares(usual_cloud);
    const PerClass<Speed> speeds = settling_speeds({});
    double settled = 0.0;
    for (const SizeClass size : all_classes())
        settled += shares[size] * (1.0 - still_airborne(settling_rate(speeds[size], 2.4_m), 1.0_h));
    CHECK(settled == Approx(settled_share(usual_cloud, 2.4_m, 1.0_h, {})).epsilon(0.015));
}
