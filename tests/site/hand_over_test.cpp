#include "trial.hpp"

#include "dust/dispersion.hpp"
#include "site/air_paths.hpp"
#include "site/passing_time.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

/// A scattered cloud or stirred air, one gram of a class either way.
void fill(Site& site, dust::SizeClass k, int parcels)
{
    const dust::CloudRoom& room = site.cloud_room;
    const Luck luck{5, Stream::parameter};
    const Amount all{picograms(1.0_g), picograms(0.01_g)};
    if (parcels == 0) {
        site.ledger.release(site.paint, {site.room().air[k], site.room().air_account}, k, all);
        return;
    }
    for (std::uint64_t tried = 0; site.cloud.count() < static_cast<std::size_t>(parcels); ++tried) {
        const auto part = [&](std::uint32_t axis) { return static_cast<float>(luck.uniform(tried, axis)); };
        const float x = part(0) * room.width();
        const float y = part(1) * room.depth();
        const float z = part(2) * room.ceiling;
        if (z <= room.top[room.raster.cell_at({room.raster.rect().west + Length{static_cast<double>(x)}, room.raster.rect().south + Length{static_cast<double>(y)}})]) continue;
        site.cloud.add(x, y, z, k, site.luck.next(Stream::emission), {});
        const std::int64_t n = parcels;
        site.ledger.release(site.paint, {site.cloud.amount.back(), site.room().air_account}, k, {{all.dust.count / n}, {all.lead.count / n}});
    }
}

/// Doors and windows shut, registers covered: what is in the air stays there.
void shut_up(Trial& trial) { trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap"); }

struct Fates {
    double airborne = 0.0, by_return = 0.0;
};

/// Where a gram of a class is after some time, as shares; parcels are kept from being handed over. The blower draws on the
/// room, and the air stirs so much that it is mixed long before it is changed: what the balance takes for granted.
Fates fates(dust::SizeClass k, int parcels, Time time)
{
    Trial trial;
    trial.after("window close-closet cover-closet");
    opening(trial.site, {"door"}).is_open = false;
    trial.site.is_air_stale = true;
    trial.site.uncertain.eddy = 10.0;
    fill(trial.site, k, parcels);
    const auto released = static_cast<double>(trial.site.ledger.released().dust.count);
    pass_time(trial.site, time, {false, [](Site& site, Time) { std::fill(site.cloud.age.begin(), site.cloud.age.end(), 0.0F); }});
    audit(trial.site);
    Fates found;
    for (std::size_t i = 0; i < trial.site.cloud.count(); ++i) found.airborne += static_cast<double>(trial.site.cloud.amount[i].dust.count);
    const Zone& room = trial.site.room();
    found.airborne += static_cast<double>(room.air[k].dust.count);
    found.by_return = static_cast<double>(trial.site.ledger.crossed(dust::Pathway::return_air)[k].dust.count);
    found.airborne /= released;
    found.by_return /= released;
    return found;
}

/// Three standard errors of a share counted with so many parcels, and a little for what mixing cannot even out at once.
double margin(double share, int parcels) { return 3.0 * std::sqrt(share * (1.0 - share) / parcels) + 0.01; }

}

TEST_CASE("parcels and the stirred balance agree on dust that stays long", "[air]")
{
    constexpr int parcels = 2'500;
    for (const dust::SizeClass k : {dust::SizeClass::um_1, dust::SizeClass::um_5}) {
        const Fates walked = fates(k, parcels, 10.0_min);
        const Fates balanced = fates(k, 0, 10.0_min);
        INFO(word_of(k));
        INFO("airborne " << walked.airborne << " by parcels, " << balanced.airborne << " by the balance; return " << walked.by_return << ", " << balanced.by_return);
        REQUIRE(balanced.airborne < 0.7);       // much of it has gone somewhere
        REQUIRE(balanced.by_return > 0.2);
        CHECK(walked.airborne == Approx(balanced.airborne).margin(margin(balanced.airborne, parcels)));
        CHECK(walked.by_return == Approx(balanced.by_return).margin(margin(balanced.by_return, parcels)));
    }
}

TEST_CASE("an even cloud is handed over after one mixing time, a lopsided one after two", "[air]")
{
    const auto handed_over_at = [](bool is_even) {
        Trial trial;
        shut_up(trial);
        fill(trial.site, dust::SizeClass::um_1, 600);
        if (!is_even)   // shut up in the western half: nothing of the room mixes it
            for (std::size_t i = 0; i < trial.site.cloud.count(); ++i) trial.site.cloud.x[i] *= 0.5F;
        const Zone& room = trial.site.room();
        trial.site.uncertain.eddy = 0.3;        // slow, so that a lopsided cloud still is when its time comes
        const Time mixing = dust::mixing_time(std::max(room.plan.width, room.plan.depth), dust::resting_room * trial.site.uncertain.eddy);
        const Time begin = trial.site.now;
        while (trial.site.cloud.count() > 300) {
            pass_time(trial.site, 10.0_s, {false});
            if (!is_even)
                for (std::size_t i = 0; i < trial.site.cloud.count(); ++i)
                    if (trial.site.cloud.x[i] > 0.5F * trial.site.cloud_room.width()) trial.site.cloud.x[i] -= 0.5F * trial.site.cloud_room.width();
        }
        audit(trial.site);
        return (trial.site.now - begin) / mixing;
    };
    CHECK(handed_over_at(true) == Approx(1.0).margin(0.05));
    CHECK(handed_over_at(false) == Approx(2.0).margin(0.05));
}

TEST_CASE("dust mixes sooner where the air stirs more", "[air]")
{
    const auto young = [](double eddy) {
        Trial trial;
        shut_up(trial);
        trial.site.uncertain.eddy = eddy;
        fill(trial.site, dust::SizeClass::um_1, 200);
        pass_time(trial.site, 5.0_min, {false});
        return trial.site.cloud.count();
    };
    CHECK(young(0.4) > 150);
    CHECK(young(2.5) == 0);
}

}
