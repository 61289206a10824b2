#include "dust/emission.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <initializer_list>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr std::array every_activity = {Activity::dry_hand_sanding,   Activity::power_sanding, Activity::dry_scraping,
                                       Activity::plaster_demolition, Activity::sawing_trim,   Activity::window_removal,
                                       Activity::prying_trim,        Activity::drilling};
constexpr std::array every_control = {DustControl::none, DustControl::misted, DustControl::hepa_shroud};

}

TEST_CASE("whatever comes off ends up as chips, fallen dust, cloud or in the vacuum")
{
    for (const Activity activity : every_activity)
        for (const DustControl control : every_control)
            for (const EmissionDraw draw : {EmissionDraw{}, EmissionDraw{5.0, 6.0}, EmissionDraw{0.2, 0.1}}) {
                const Release from = release(activity, control, 3.0, draw);
                // A draw of more dust takes it from the chips, and adds to the debris only when no chips are left.
                const double typical = emission_traits(activity).debris_grams.typical * 3e-3;
                const double dust = typical * emission_traits(activity).dust_share.typical * control_traits(control).dust_share.typical * draw.yield;
                CHECK(from.total().si == Approx(std::max(typical, dust)));
                CHECK((from.fallen + from.cloud + from.captured).si == Approx(dust));
                for (const Mass part : {from.chips, from.fallen, from.cloud, from.captured}) CHECK(part.si >= 0.0);
            }
}

TEST_CASE("a draw moves dust, its airborne share and the size of its cloud, each by itself")
{
    const Release usual = release(Activity::dry_scraping, DustControl::none, 1.0);
    const Release dusty = release(Activity::dry_scraping, DustControl::none, 1.0, {.yield = 3.0});
    CHECK(dusty.cloud / usual.cloud == Approx(3.0));
    CHECK(dusty.fallen / usual.fallen == Approx(3.0));
    CHECK(dusty.chips < usual.chips);
    const Release airy = release(Activity::dry_scraping, DustControl::none, 1.0, {.airborne = 2.0});
    CHECK(airy.cloud / usual.cloud == Approx(2.0));
    CHECK((airy.cloud + airy.fallen).si == Approx((usual.cloud + usual.fallen).si));
    CHECK(cloud_sizes(Activity::dry_scraping, {.cloud_median = 1.5}).median / cloud_sizes(Activity::dry_scraping, {}).median == Approx(1.5));
    CHECK(cloud_sizes(Activity::dry_scraping, {}) == emission_traits(Activity::dry_scraping).cloud);
}

TEST_CASE("typical figures lie in their own bands")
{
    for (const Activity activity : every_activity) {
        const EmissionTraits& traits = emission_traits(activity);
        for (const Band& band : {traits.debris_grams, traits.dust_share, traits.airborne_share}) CHECK(band.holds(band.typical));
        CHECK(traits.cloud_median_um.typical == Approx(traits.cloud.median / 1.0_um));
        CHECK(traits.cloud_median_um.holds(traits.cloud_median_um.typical));
        CHECK(traits.fall.median > traits.cloud.median);
    }
}

TEST_CASE("controls keep dust out of the air by what was measured")
{
    const Mass dry = release(Activity::dry_scraping, DustControl::none, 1.0).cloud;
    const double misted = release(Activity::dry_scraping, DustControl::misted, 1.0).cloud / dry;
    CHECK(misted >= 0.149);   // personal air fell to 0.30 or 0.66 in NIOSH records; the product of both judgments is 0.15
    CHECK(misted <= 0.8);
    const Mass plain = release(Activity::power_sanding, DustControl::none, 1.0).cloud;
    const Release shrouded = release(Activity::power_sanding, DustControl::hepa_shroud, 1.0);
    CHECK(shrouded.cloud / plain >= 0.03);
    CHECK(shrouded.cloud / plain <= 0.2);
    CHECK(shrouded.captured.si > 0.0);
}

TEST_CASE("scraping leaves one part in a hundred of the lifted lead as dust to wipe up")
{
    const Release scraped = release(Activity::dry_scraping, DustControl::none, 1.0);
    const double share = (scraped.fallen + scraped.cloud) / scraped.total();
    CHECK(share >= 0.003);
    CHECK(share <= 0.03);
}

TEST_CASE("debris lands near the work and never beyond a meter and a half")
{
    CHECK(throw_distance(0.0).si == 0.0);
    CHECK(throw_distance(0.5).si == Approx(0.32).epsilon(0.02));
    CHECK(throw_distance(0.999999999).si <= 1.5);
    CHECK(throw_distance(0.999999999).si > 1.49);
    CHECK_THROWS_AS(throw_distance(1.0), BrokenPromise);
}

TEST_CASE("demolition dust is poor in lead")
{
    CHECK(lead_fraction(1.0_mgpcm2, Loading{40.0}) == Approx(250e-6));
    CHECK_THROWS_AS(lead_fraction(1.0_mgpcm2, {}), BrokenPromise);
}
