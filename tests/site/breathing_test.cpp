#include "trial.hpp"

#include "core/steady.hpp"
#include "site/breathing.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

namespace {

using dust::SizeClass;

/// A closed room whose only way out is a flow of its own, so that what it clears is known.
Trial aired(AirFlow flow)
{
    Trial trial;
    trial.site.is_hvac_running = false;
    refresh_air(trial.site);
    trial.site.air.paths.clear();
    AirPath out;
    out.from = trial.site.work_room;
    out.opening = 0;
    out.flow = flow;
    out.pathway = dust::Pathway::seam;
    trial.site.air.paths.push_back(out);
    return trial;
}

/// Lets time pass while dust of a class is let loose beside Lee at an even rate.
void let_loose(Trial& trial, SizeClass k, dust::MassRate rate, Time time)
{
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    pass_time(trial.site, time, {true, [&](Site& site, Time spell) {
        const Picograms amount = picograms(rate * spell);
        site.ledger.release(site.paint, site.surfaces[floor].free(0, k), k, {amount, part(amount, 0.1)});
        raise_near(site, {{"lee"}}, site.surfaces[floor].free(0, k), site.work_room, k, {amount, part(amount, 0.1)});
    }});
}

double lead_breathed(Trial& trial, const std::string& who) { return exposure_of(worker(trial.site, {who})).lead.si; }

}

TEST_CASE("in steady state the breathing zone agrees with the two-box model", "[breathing]")
{
    constexpr dust::MassRate rate{1e-6 / 60.0};     // 1 mg/min
    for (const SizeClass k : {SizeClass::um_2_5, SizeClass::um_5, SizeClass::um_10}) {
        Trial trial = aired(60.0_m3ph);
        let_loose(trial, k, rate, 4.0_h);           // until it is steady
        const dust::Dose before = worker(trial.site, {"lee"}).breathed_dust;
        const dust::Dose rosas = worker(trial.site, {"rosa"}).breathed_dust;
        let_loose(trial, k, rate, 30.0_min);
        const double inhalable = dust::inhalable_share(dust::typical_diameter(k));
        const Zone& room = trial.site.room();
        const dust::DepositionSpeeds& falls = trial.site.deposition[k];
        const Area walls = (room.plan.width + room.plan.depth) * room.plan.ceiling * 2.0;
        const AirFlow cleared = 60.0_m3ph + falls.floor * room.raster.rect().area() + falls.wall * walls;
        const dust::Concentration near = dust::near_field(rate, cleared, dust::closed_room_exchange) * inhalable;
        const dust::Concentration far = dust::far_field(rate, cleared) * inhalable;
        INFO(static_cast<int>(k));
        CHECK(((worker(trial.site, {"lee"}).breathed_dust - before) / 30.0_min).si == Approx(near.si).epsilon(0.2));
        CHECK(((worker(trial.site, {"rosa"}).breathed_dust - rosas) / 30.0_min).si == Approx(far.si).epsilon(0.2));
    }
}

TEST_CASE("forty air changes an hour spare the one who makes the dust less than half of it", "[breathing]")
{
    // Sussell et al. 1999 (record): 24 ug/m3 without the exhaust, 73 with it. Half an hour of dry scraping with all its sizes.
    const auto breathed = [](double changes, const std::string& who) {
        const Volume room = Trial().site.room().volume;
        Trial trial = aired(room * Rate{changes / 3600.0});
        trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", is-misted = false, time = "30 min", share = 0.5)");
        return lead_breathed(trial, who);
    };
    CHECK(breathed(40.0, "lee") > 0.5 * breathed(0.5, "lee"));
    CHECK(breathed(40.0, "lee") < breathed(0.5, "lee"));
    CHECK(breathed(0.5, "rosa") < breathed(0.5, "lee"));    // she stands in the room, he at the work
    CHECK(breathed(0.5, "rosa") > 0.0);
}

TEST_CASE("who is out of the room breathes the air where he is", "[breathing]")
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap");
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", is-misted = false, time = "10 min", share = 0.3)");
    trial.then(R"(do = "leave-work-area", opening = "door")");
    const double lee = lead_breathed(trial, "lee");
    const double rosa = lead_breathed(trial, "rosa");
    trial.then(R"(do = "wait", time = "20 min")");
    CHECK(lead_breathed(trial, "lee") - lee < 0.5 * (lead_breathed(trial, "rosa") - rosa));
}

TEST_CASE("misting the air brings mixed dust down faster than falling does", "[breathing]")
{
    const auto left = [](bool mists_air) {
        Trial trial;
        trial.after("hvac-off window sheet");
        const std::size_t sheet = trial.site.sheeting.front();
        strew(trial.site, sheet, 0, SizeClass::um_1, 1.0_g);
        raise_into_air(trial.site, trial.site.surfaces[sheet].free(0, SizeClass::um_1), trial.site.work_room, SizeClass::um_1, trial.site.surfaces[sheet].patches[0].free[SizeClass::um_1]);
        trial.then(std::string("do = \"mist-sheeting\", mister = \"mister\", mists-air = ") + (mists_air ? "true" : "false"));
        return static_cast<double>(trial.site.room().air[SizeClass::um_1].dust.count);
    };
    // 0.05 m3/s for four minutes, Kokkonen et al. (abstract): 0.03 to 0.07.
    const double clears = 0.05 * 240.0 / Trial().site.room().volume.si;
    CHECK(left(true) / left(false) == Approx(steady::exp(-clears)).epsilon(0.05));
}

}
