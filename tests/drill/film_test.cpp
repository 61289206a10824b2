#include "short_plan.hpp"

#include "drill/film.hpp"
#include "site/looking.hpp"

#include <algorithm>

namespace flapdoor::drill {

namespace {

struct Shot {
    Run run;
    Film film;
};

Shot shot(Time every, std::size_t most_points = 4000)
{
    const job::Scenario scenario = job::shipped_scenario();
    Camera camera(every, most_points);
    RunOptions options;
    options.watcher = [&](const site::Site& site) { camera.watch(site); };
    options.after_card = [&](const site::Site& site) { camera.end_card(site); };
    Run run = carry_out(scenario, short_plan(scenario), options);
    run.site.watcher = {};
    return {std::move(run), camera.take_film()};
}

}

TEST_CASE("frames stand in the order of time, and each card ends with one")
{
    const Shot s = shot(30.0_s);
    REQUIRE(s.film.frames.size() > 50);
    CHECK(std::is_sorted(s.film.frames.begin(), s.film.frames.end(), [](const Frame& a, const Frame& b) { return a.at < b.at; }));
    CHECK(std::is_sorted(s.film.frames.begin(), s.film.frames.end(), [](const Frame& a, const Frame& b) { return a.card < b.card; }));
    for (const job::LogEntry& entry : s.run.site.log.entries) {
        const auto ends = std::count_if(s.film.frames.begin(), s.film.frames.end(), [&](const Frame& f) { return f.card == entry.card && f.at == entry.end; });
        CHECK(ends >= 1);
    }
    for (const Frame& frame : s.film.frames) {
        const job::LogEntry& entry = s.run.site.log.entries.at(static_cast<std::size_t>(frame.card));
        CHECK(frame.at >= entry.start);
        CHECK(frame.at <= entry.end);
    }
}

TEST_CASE("the last frame shows the site as it was left")
{
    const Shot s = shot(5.0_min);
    const site::Site& site = s.run.site;
    const Frame& last = s.film.frames.back();
    CHECK(last.at == site.now);
    REQUIRE(last.lead.size() == site.zones.size());
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        REQUIRE(last.lead[z].size() == site.zones[z].top.size());
        for (std::size_t cell = 0; cell < last.lead[z].size(); ++cell) {
            const site::Spot spot = site.zones[z].top[cell];
            const site::Surface& surface = site.surfaces[spot.surface];
            const dust::Load& load = surface.patches[spot.patch];
            Picograms lead;     // without chips
            for (const dust::SizeClass k : dust::all_classes())
                if (k != dust::SizeClass::chips) lead += load.free[k].lead + load.bound[k].lead;
            const double micrograms_per_square_foot = static_cast<double>(lead.count) * 1e-6 / (surface.patch_area.si / 0.09290304);
            CHECK(static_cast<double>(last.lead[z][cell]) == Approx(micrograms_per_square_foot).epsilon(1e-5));
            CHECK(static_cast<double>(last.seen[z][cell]) == Approx(site::coverage(surface, spot.patch)).epsilon(1e-5));
        }
    }
    REQUIRE(last.walls.size() == 4);
    std::size_t side = 0;
    for (const site::Surface& surface : site.surfaces) {
        if (surface.role != site::SurfaceRole::wall || surface.zone != site.work_room) continue;
        const WallShot& wall = last.walls.at(side++);
        CHECK(surface.name.find(std::string(word_of(wall.wall)) + " wall") != std::string::npos);
        CHECK(wall.bands == 3);
        REQUIRE(wall.lead.size() == surface.patches.size());
        for (std::size_t p = 0; p < wall.lead.size(); ++p) {
            Picograms lead;     // without chips
            for (const dust::SizeClass k : dust::all_classes())
                if (k != dust::SizeClass::chips) lead += surface.patches[p].free[k].lead + surface.patches[p].bound[k].lead;
            CHECK(static_cast<double>(wall.lead[p]) == Approx(static_cast<double>(lead.count) * 1e-6 / (surface.patch_area.si / 0.09290304)).epsilon(1e-5));
        }
    }
    CHECK(last.outside_lead == site.ledger.on(dust::Side::outside).lead);
    REQUIRE(last.people.size() == 2);
    CHECK(last.people[1].at.x == site.crew[1].at.x);
    CHECK(last.people[1].is_inside == site.crew[1].is_inside);
    CHECK(last.has_tack_pad);
    CHECK(last.is_hvac_running);
    REQUIRE(last.is_object_there.size() == 2);
    CHECK(last.is_object_there[0] == 1);
}

TEST_CASE("sheeting and openings appear in the frames while they are there")
{
    const Shot s = shot(1.0_min);
    const auto sheeted = [&](Time at) {
        const Frame& frame = s.film.at(at);
        return std::count(frame.is_sheeted.begin(), frame.is_sheeted.end(), std::uint8_t{1});
    };
    const std::vector<job::LogEntry>& log = s.run.site.log.entries;
    CHECK(sheeted(log[0].end) > 300);
    CHECK(sheeted(log[2].end) == sheeted(log[0].end));
    CHECK(sheeted(log[7].end) == 0);
    CHECK(s.film.frames.back().openings.at(0).is_open);
    CHECK_FALSE(s.film.frames.back().openings.at(1).is_open);
}

TEST_CASE("dust in the air is counted, parcels included, and gone in the end")
{
    const Shot s = shot(30.0_s);
    double most = 0.0;
    for (const Frame& frame : s.film.frames) {
        REQUIRE(frame.air_lead.size() == s.film.zones.size());
        most = std::max(most, frame.air_lead[s.film.work_room]);
    }
    CHECK(most > 1.0);      // ug/m3 while sanding
    CHECK(s.film.frames.back().air_lead[s.film.work_room] < most / 10.0);
    const bool has_points = std::any_of(s.film.frames.begin(), s.film.frames.end(), [](const Frame& f) { return !f.points.empty(); });
    CHECK(has_points);
}

TEST_CASE("a film keeps no more points than asked for")
{
    for (const Frame& frame : shot(30.0_s, 50).film.frames) CHECK(frame.points.size() < 100);
}

TEST_CASE("a moment finds the last frame not after it")
{
    Film film;
    for (const double at : {10.0, 20.0, 20.0, 30.0}) {
        film.frames.emplace_back();
        film.frames.back().at = Time{at};
        film.frames.back().card = static_cast<int>(film.frames.size());
    }
    CHECK(film.at(Time{5.0}).card == 1);
    CHECK(film.at(Time{10.0}).card == 1);
    CHECK(film.at(Time{19.9}).card == 1);
    CHECK(film.at(Time{20.0}).card == 3);
    CHECK(film.at(Time{99.0}).card == 4);
}

}
