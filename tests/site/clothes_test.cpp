#include "trial.hpp"

#include "site/cleaning.hpp"
#include "site/clothes.hpp"
#include "site/crossing.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

#include <rapidcheck.h>

namespace flapdoor::site {

namespace {

using dust::SizeClass;

/// Work has begun, and every free patch of the bedroom's floor carries the same.
struct Dusty {
    Trial trial;
    std::size_t floor = 0;
    Mass strewn{};

    explicit Dusty(Mass each = 0.01_g)
    {
        trial.first_dust();
        floor = surface_named(trial.site, "Back bedroom, floor");
        for (const std::size_t p : floor_part(trial.site, job::CleaningPath::toward_door).patches) {
            strew(trial.site, floor, p, SizeClass::um_10, each);
            strewn += each;
        }
    }

    double worn() { return mass(lee(trial).clothes.load.free[SizeClass::um_10].dust) / 1.0_g; }
};

}

TEST_CASE("vacuuming a floor leaves the measured share of its dust on the clothes, standing beside it less", "[clothes]")
{
    Dusty vacuumed;
    const double area = vacuumed.trial.site.surfaces[vacuumed.floor].patch_area.si * static_cast<double>(floor_part(vacuumed.trial.site, job::CleaningPath::toward_door).patches.size());
    const double minutes = 20.0 / area;
    vacuumed.trial.then("do = \"vacuum-surfaces\", target = \"floor\", vacuum = \"hepa-vacuum\", does-edges = false, minutes-per-square-meter = " + std::to_string(minutes));
    const double share = vacuumed.worn() / (vacuumed.strewn / 1.0_g);
    // What is picked up in 20 minutes, less what falls off again meanwhile.
    const double picked = dust::clothing_gain(dust::Stirring::vacuuming, false, true, 20.0_min);
    CHECK(share < picked);
    CHECK(share > picked * (1.0 - dust::clothing_loss(20.0_min)) * 0.98);

    Dusty working;
    work_at(working.trial.site, {{"lee"}}, working.trial.site.room().raster.rect().center(), 20.0_min);
    CHECK(working.worn() > 0.0);
    CHECK(working.worn() < vacuumed.worn());
}

TEST_CASE("carpet gives clothes more than a hard floor, and furniture tops and chips nothing", "[clothes]")
{
    Dusty dusty;
    Site& site = dusty.trial.site;
    strew(site, surface_named(site, "Dresser"), 0, SizeClass::um_10, 1.0_g);
    strew(site, dusty.floor, free_floor_patch(site), SizeClass::chips, 1.0_g);
    const auto picked_up = [&](job::FloorKind finish) {
        site.surfaces[dusty.floor].finish = finish;
        const double before = dusty.worn();
        std::vector<std::size_t> all(site.room().top.size());
        for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
        soil_clothes(site, lee(dusty.trial), all, dust::Stirring::walking, 1.0_min);
        return dusty.worn() - before;
    };
    const double dresser = mass(total(site.surfaces[surface_named(site, "Dresser")]).dust) / 1.0_g;
    const double hard = picked_up(job::FloorKind::wood);
    CHECK(picked_up(job::FloorKind::carpet) == Approx(2.7 * hard).epsilon(0.01));
    CHECK(mass(total(site.surfaces[surface_named(site, "Dresser")]).dust) / 1.0_g == dresser);
    CHECK(lee(dusty.trial).clothes.load.free[SizeClass::chips].is_zero());
    site.surfaces[dusty.floor].wet_until = site.now + 10.0_min;
    CHECK(picked_up(job::FloorKind::wood) == Approx(0.1 * hard).epsilon(0.02));
    audit(site);
}

TEST_CASE("clothes shed 47 % in an hour, around where somebody stands, inside and outside, and nothing off the site", "[clothes]")
{
    for (const bool is_outside : {false, true}) {
        Dusty dusty;
        work_at(dusty.trial.site, {{"lee"}}, dusty.trial.site.room().raster.rect().center(), 20.0_min);
        if (is_outside) leave(dusty.trial.site, lee(dusty.trial), false);
        const double worn = dusty.worn();
        pass_time(dusty.trial.site, 1.0_h);
        CHECK(dusty.worn() / worn == Approx(0.53).epsilon(0.001));
        lee(dusty.trial).is_on_site = false;
        const double taken_away = dusty.worn();
        pass_time(dusty.trial.site, 1.0_h);
        CHECK(dusty.worn() == taken_away);
        audit(dusty.trial.site);
    }
    // On one spot it would be a heap.
    Dusty dusty;
    work_at(dusty.trial.site, {{"lee"}}, dusty.trial.site.room().raster.rect().center(), 20.0_min);
    leave(dusty.trial.site, lee(dusty.trial), false);
    pass_time(dusty.trial.site, 1.0_h);
    const Surface& hall = dusty.trial.site.surfaces[surface_named(dusty.trial.site, "Hall, floor")];
    CHECK(std::count_if(hall.patches.begin(), hall.patches.end(), [](const dust::Load& load) { return !load.free[SizeClass::um_10].is_zero(); }) > 50);
}

TEST_CASE("before the first dust nobody's clothes get dirty", "[clothes]")
{
    Trial trial;
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    strew_all(trial.site, floor, whole(trial.site, floor).patches, 0.001_g);
    work_at(trial.site, {{"lee"}}, trial.site.room().raster.rect().center(), 20.0_min);
    CHECK(dust::total(lee(trial).clothes.load).is_zero());
}

TEST_CASE("clothes, floor and hall together hold what they held, whatever people do for how long", "[property][clothes]")
{
    const bool holds = rc::check([] {
        Dusty dusty(Mass{*rc::gen::inRange(0, 1'000'000) * 1e-9});
        Site& site = dusty.trial.site;
        const Amount released = site.ledger.released();
        for (int n = *rc::gen::inRange(1, 8); n > 0; --n) {
            const Time spell{static_cast<double>(*rc::gen::inRange(0, 7200))};
            Worker& who = lee(dusty.trial);
            switch (*rc::gen::inRange(0, 4)) {
                case 0: soil_clothes(site, who, floor_within_reach(site, who.zone, who.at), dust::Stirring::vacuuming, spell); break;
                case 1: soil_clothes(site, who, floor_within_reach(site, who.zone, who.at), dust::Stirring::working, spell); break;
                case 2: shed_clothes(site, spell); break;
                default:
                    if (who.is_inside) leave(site, who, false);
                    else enter(site, who, false);
            }
        }
        audit(site);    // every picogram, patch by patch
        RC_ASSERT(site.ledger.closes());
        RC_ASSERT(site.ledger.released() == released);
        RC_ASSERT(released == site.ledger.on(dust::Side::inside) + site.ledger.on(dust::Side::outside) + site.ledger.on(dust::Side::contained));
    });
    CHECK(holds);
}

}
