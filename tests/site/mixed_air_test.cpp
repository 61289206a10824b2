#include "trial.hpp"

#include "dust/mixed_zone.hpp"
#include "site/air_paths.hpp"
#include "site/carried_off.hpp"
#include "site/mixed_air.hpp"
#include "site/passing_time.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace flapdoor::site {

namespace {

constexpr auto finest = dust::SizeClass::um_1;

/// Fine dust in the stirred air of the work room.
void fill(Trial& trial, Mass amount, dust::SizeClass k = finest)
{
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    strew(trial.site, floor, 0, k, amount);
    Surface& surface = trial.site.surfaces[floor];
    raise_into_air(trial.site, surface.free(0, k), trial.site.work_room, k, surface.patches[0].free[k]);
}

double in_air(const Site& site, std::size_t zone, dust::SizeClass k = finest) { return static_cast<double>(site.zones[zone].air[k].dust.count); }

}

TEST_CASE("ticks of ten seconds give what one step over the whole time gives", "[air]")
{
    // 0.5 % is the promise; what is left of it is whole picograms.
    for (const dust::SizeClass k : {dust::SizeClass::um_0_5, dust::SizeClass::um_5, dust::SizeClass::um_20}) {
        Trial ticks;    // doors and window open, blower on: the strongest exchange there is
        fill(ticks, 1.0_g, k);
        Trial at_once = ticks;
        refresh_air(ticks.site);
        refresh_air(at_once.site);
        for (int tick = 0; tick < 60; ++tick) move_mixed(ticks.site, 10.0_s);
        move_mixed(at_once.site, 600.0_s);
        for (std::size_t z = 0; z < ticks.site.zones.size(); ++z) {
            INFO("zone " << z);
            CHECK(in_air(ticks.site, z, k) == Approx(in_air(at_once.site, z, k)).epsilon(1e-6).margin(30'000.0));
        }
        for (std::size_t p = 0; p < dust::pathway_count; ++p) {
            const auto by = static_cast<dust::Pathway>(p);
            CHECK(static_cast<double>(ticks.site.ledger.crossed(by)[k].dust.count) == Approx(static_cast<double>(at_once.site.ledger.crossed(by)[k].dust.count)).epsilon(1e-6).margin(1e6));
        }
        audit(ticks.site);
        audit(at_once.site);
    }
}

TEST_CASE("each way out of the stirred air gets its share of what goes", "[air]")
{
    Trial trial;
    trial.after("window");
    fill(trial, 1.0_g);
    refresh_air(trial.site);
    const Zone& room = trial.site.room();
    const double before = in_air(trial.site, trial.site.work_room);
    move_mixed(trial.site, 1.0_s);      // so short that nothing comes back
    const double fallout = (trial.site.deposition[finest].floor / room.plan.ceiling).si;
    CHECK(static_cast<double>(room.falling[finest].dust.count) == Approx(before * fallout).epsilon(0.01));
    double to_return = 0.0;
    for (const AirPath& path : trial.site.air.paths)
        if (path.from == trial.site.work_room && path.pathway == dust::Pathway::return_air) to_return += (path.flow / room.volume).si * path.passes[finest];
    REQUIRE(to_return > 0.0);
    CHECK(static_cast<double>(trial.site.ledger.crossed(dust::Pathway::return_air)[finest].dust.count) == Approx(before * to_return).epsilon(0.01));
}

TEST_CASE("the running blower clears the house as measured, and a fine filter clears it faster", "[air]")
{
    // Loss of the house's own air an hour, its exchange with other zones and the outdoors cut off.
    const auto loss = [](bool is_running, int merv, dust::SizeClass k) {
        Trial trial;
        trial.site.scenario.air_handling.filter_merv = merv;
        if (!is_running) trial.after("hvac-off");
        const auto house = static_cast<std::size_t>(std::find_if(trial.site.zones.begin(), trial.site.zones.end(), [](const Zone& zone) { return zone.plan.id.name == "house"; })
                                                    - trial.site.zones.begin());
        fill(trial, 1.0_g, k);
        const Amount all = trial.site.room().air[k];
        Zone& there = trial.site.zones[house];
        trial.site.ledger.move({trial.site.room().air[k], trial.site.room().air_account}, {there.air[k], there.air_account}, k, all, dust::Pathway::seam);
        refresh_air(trial.site);
        trial.site.air.paths.clear();
        move_mixed(trial.site, 360.0_s);
        audit(trial.site);
        CHECK(trial.site.filter.load.free[k].is_zero() == !(is_running && merv >= 8));
        return -std::log(in_air(trial.site, house, k) / 1e12) * 10.0;
    };
    for (const dust::SizeClass k : {dust::SizeClass::um_0_5, dust::SizeClass::um_1, dust::SizeClass::um_5, dust::SizeClass::um_10}) {
        CAPTURE(dust::typical_diameter(k).si);
        const double still = loss(false, 4, k);
        CHECK(loss(true, 4, k) == Approx(still + std::min(still, 2.0)).epsilon(0.01));
    }
    CHECK(loss(true, 13, finest) > 2.0 * loss(true, 4, finest));
    CHECK(loss(false, 13, finest) == Approx(loss(false, 4, finest)));
}

TEST_CASE("what a crack holds back stays in the air of the zone", "[air]")
{
    const auto left_after = [](double passes) {
        Trial trial;
        trial.after("window");
        fill(trial, 1.0_g);
        refresh_air(trial.site);
        for (AirPath& path : trial.site.air.paths)
            if (path.from == trial.site.work_room) path.passes[finest] = passes;
        move_mixed(trial.site, 300.0_s);
        audit(trial.site);
        return in_air(trial.site, trial.site.work_room) / 1e12;
    };
    const double kept = left_after(0.0);
    const Trial still;
    const Rate fallout = still.site.deposition[finest].floor / still.site.room().plan.ceiling;
    CHECK(kept == Approx(std::exp(-(fallout * 300.0_s))).margin(0.002));    // only fallout, and next to nothing to the walls
    CHECK(left_after(0.5) < kept - 0.05);
    CHECK(left_after(1.0) < left_after(0.5) - 0.05);
}

TEST_CASE("fallout comes down once a minute, evenly, and none of it is lost", "[air]")
{
    Trial trial;
    trial.after("hvac-off window");
    fill(trial, 0.1_g, dust::SizeClass::um_10);
    const Zone& room = trial.site.room();
    pass_time(trial.site, 50.0_s);
    CHECK(room.falling[dust::SizeClass::um_10].dust > Picograms{});
    pass_time(trial.site, 10.0_s);
    CHECK(room.falling[dust::SizeClass::um_10].is_zero());
    CHECK(room.reaching_walls[dust::SizeClass::um_10].is_zero());
    audit(trial.site);
    // Two bare cells of the floor got the same, but for a picogram.
    const auto on = [&](std::size_t cell) {
        const Spot spot = room.top[cell];
        const dust::Load& load = trial.site.surfaces[spot.surface].patches[spot.patch];
        return load.free[dust::SizeClass::um_10].dust.count + load.bound[dust::SizeClass::um_10].dust.count;
    };
    const std::size_t cell = free_floor_patch(trial.site);
    Trial before;
    before.after("hvac-off window");
    const auto had = [&](std::size_t c) {
        const Spot spot = before.site.room().top[c];
        const dust::Load& load = before.site.surfaces[spot.surface].patches[spot.patch];
        return load.free[dust::SizeClass::um_10].dust.count + load.bound[dust::SizeClass::um_10].dust.count;
    };
    CHECK(on(cell) > had(cell));
    CHECK(std::abs((on(cell) - had(cell)) - (on(cell + 1) - had(cell + 1))) <= 1);
}

TEST_CASE("the last wisp settles instead of lingering for ever", "[air]")
{
    Trial trial;
    trial.after("hvac-off window");
    fill(trial, Mass{1e-11}, dust::SizeClass::um_0_5);  // 10 ng
    move_mixed(trial.site, 10.0_s);
    for (const Zone& zone : trial.site.zones) CHECK(zone.air[dust::SizeClass::um_0_5].is_zero());
    CHECK(trial.site.room().falling[dust::SizeClass::um_0_5].dust == Picograms{10'000});
    audit(trial.site);
}

}
