#include "dust/visibility.hpp"

#include "dust/wipe_shade.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("half of all people see dust at the threshold, and four times the dust takes them from one in ten to nine in ten")
{
    const auto seen = [](double coverage) { return seen_probability(coverage, Background::dark_floor, Light::room); };
    CHECK(seen(just_seen) == Approx(0.5));
    CHECK(seen(just_seen / 2.0) == Approx(0.1).epsilon(1e-6));
    CHECK(seen(just_seen * 2.0) == Approx(0.9).epsilon(1e-6));
    CHECK(seen(0.0) == 0.0);
}

TEST_CASE("raking light shows more and a light floor hides more")
{
    CHECK(seen_probability(1e-3, Background::dark_floor, Light::raking) > seen_probability(1e-3, Background::dark_floor, Light::room));
    CHECK(seen_probability(1e-3, Background::light_floor, Light::room) < seen_probability(1e-3, Background::plastic_film, Light::room));
    CHECK(seen_probability(1e-3, Background::carpet, Light::room) < seen_probability(1e-3, Background::light_floor, Light::room));
}

TEST_CASE("fine dust covers more than coarse dust of the same mass, and classes add up")
{
    CHECK(area_coverage(0.1_gpm2, 5.0_um) == Approx(8.0 * area_coverage(0.1_gpm2, 40.0_um)));
    PerClass<Loading> fine, coarse, both;
    fine[SizeClass::um_5] = both[SizeClass::um_5] = 0.1_gpm2;
    coarse[SizeClass::um_80] = both[SizeClass::um_80] = 0.1_gpm2;
    CHECK(area_coverage(fine) > 10.0 * area_coverage(coarse));
    CHECK(area_coverage(both) == Approx(area_coverage(fine) + area_coverage(coarse)));
}

TEST_CASE("a larger area on one cloth is the stricter test")
{
    const double thin = 2e-4;
    CHECK(matches_card(cloth_coverage(thin, 4.0_ft2)));
    CHECK_FALSE(matches_card(cloth_coverage(thin, most_floor_per_cloth)));
}

TEST_CASE("dust that just passes the card may carry several action levels of lead")
{
    const auto on_floor = [](double lead) { return lead_that_just_passes(most_floor_per_cloth, 20.0_um, lead, 0.002) / 1.0_ugpft2; };
    CHECK(on_floor(0.005) == Approx(0.38).epsilon(0.02));
    CHECK(on_floor(0.05) == Approx(3.8).epsilon(0.02));
    CHECK(on_floor(0.15) == Approx(11.4).epsilon(0.02));
    CHECK(lead_that_just_passes(0.2_m2, 20.0_um, 0.05, 0.002) / 1.0_ugpft2 == Approx(70.8).epsilon(0.02));
    CHECK(card_coverage.holds(card_coverage.typical));
}
