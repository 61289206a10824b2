#include "trial.hpp"

#include "site/air_paths.hpp"
#include "site/passing_time.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

/// Air that leaves the work room through an opening.
AirFlow out_through(Trial& trial, const std::string& id)
{
    if (trial.site.is_air_stale) refresh_air(trial.site);
    AirFlow sum{};
    for (const AirPath& path : trial.site.air.paths)
        if (path.from == trial.site.work_room && path.opening && trial.site.openings[*path.opening].plan.id.name == id) sum += path.flow;
    return sum;
}

/// The room shut as for work, with the flap card that is given.
AirFlow out_through_flap(const std::string& flap)
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet");
    trial.then("do = \"hang-flap\", opening = \"door\", sheeting = \"poly\"" + flap);
    return out_through(trial, "door");
}

constexpr double return_flow = 170.0 / 3600.0;     // m3/s, as the scenario says

}

TEST_CASE("a running blower draws the scenario's flow into an open return", "[air]")
{
    Trial trial;
    CHECK(out_through(trial, "return").si == Approx(return_flow));
    bool is_named = false;
    for (const AirPath& path : trial.site.air.paths)
        is_named = is_named || (path.is_return && path.pathway == dust::Pathway::return_air && path.from == trial.site.work_room);
    CHECK(is_named);
}

TEST_CASE("closed louvers leave a part of the return's flow, a taped cover next to none", "[air]")
{
    Trial open;
    Trial closed;
    closed.after("close-return");
    Trial loose;
    loose.then(R"(do = "cover-register", opening = "return", sheeting = "poly", is-taped = false)");
    Trial taped;
    taped.after("cover-return");
    const double by_louvers = out_through(closed, "return") / out_through(open, "return");
    CHECK(by_louvers > 0.05);
    CHECK(by_louvers < 0.6);
    CHECK(out_through(loose, "return") < out_through(open, "return"));
    CHECK(out_through(taped, "return") < out_through(loose, "return") * 0.2);
    CHECK(out_through(taped, "return") < out_through(open, "return") * 0.05);
    CHECK(out_through(taped, "return") > AirFlow{});
}

TEST_CASE("with the blower off nothing is drawn into the return", "[air]")
{
    Trial trial;
    trial.after("hvac-off");
    const AirFlow leak = out_through(trial, "return");
    for (const AirPath& path : trial.site.air.paths) CHECK_FALSE(path.is_return);
    CHECK(leak.si < return_flow);
}

TEST_CASE("a flap door passes a small part of what an open doorway does", "[air]")
{
    Trial open;
    open.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet");
    const AirFlow doorway = out_through(open, "door");
    const AirFlow flap = out_through_flap("");
    CHECK(flap < doorway * 0.2);
    CHECK(flap > AirFlow{});
}

TEST_CASE("each thing left out of a flap door makes it leak more", "[air]")
{
    const AirFlow good = out_through_flap("");
    for (const char* fault : {", has-dowel = false", ", is-taped = false", ", has-folds = false", ", gap = \"2 ft\"", ", sheets = 1"}) {
        INFO(fault);
        CHECK(out_through_flap(fault) > good * 1.05);
    }
    CHECK(out_through_flap(", sheets = 1") > out_through_flap(", has-dowel = false"));
}

TEST_CASE("an uncertain leak multiplies slits and seams, not what stands open", "[air]")
{
    const auto leaks = [](double factor, const char* id, const std::string& labels) {
        Trial trial;
        trial.site.uncertain.leak = factor;
        trial.after(labels);
        return out_through(trial, id).si;
    };
    CHECK(leaks(2.0, "window-1", "hvac-off window") / leaks(1.0, "window-1", "hvac-off window") == Approx(2.0).epsilon(0.05));
    const std::string shut = "hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap";
    CHECK(leaks(2.0, "door", shut) / leaks(1.0, "door", shut) == Approx(2.0).epsilon(0.1));
    CHECK(leaks(2.0, "door", "hvac-off window") / leaks(1.0, "door", "hvac-off window") == Approx(1.0).epsilon(0.1));
    Trial drawn;
    drawn.site.uncertain.return_flow = 1.5;
    CHECK(out_through(drawn, "return").si == Approx(1.5 * return_flow));
}

TEST_CASE("cracks of the outer walls carry dust outdoors, the finer the more of it", "[air]")
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap");
    refresh_air(trial.site);
    bool is_found = false;
    for (const AirPath& path : trial.site.air.paths) {
        if (path.opening || path.from != trial.site.work_room) continue;
        is_found = true;
        CHECK_FALSE(path.to);
        CHECK(path.pathway == dust::Pathway::seam);
        CHECK(path.passes[dust::SizeClass::um_0_5] > 0.95);
        CHECK(path.passes[dust::SizeClass::um_1] < path.passes[dust::SizeClass::um_0_5]);
        CHECK(path.passes[dust::SizeClass::um_1] > 0.7);
        CHECK(path.passes[dust::SizeClass::um_5] == 0.0);
    }
    CHECK(is_found);
    const std::vector<std::size_t> cells = cells_near(trial.site, std::nullopt);
    const std::size_t middle = trial.site.room().raster.cell_at(trial.site.room().raster.rect().center());
    CHECK(std::find(cells.begin(), cells.end(), middle) == cells.end());
    CHECK(std::find(cells.begin(), cells.end(), std::size_t{0}) != cells.end());

    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    strew(trial.site, floor, 0, dust::SizeClass::um_0_5, 1.0_g);
    raise_into_air(trial.site, trial.site.surfaces[floor].free(0, dust::SizeClass::um_0_5), trial.site.work_room, dust::SizeClass::um_0_5,
                   trial.site.surfaces[floor].patches[0].free[dust::SizeClass::um_0_5]);
    pass_time(trial.site, 30.0_min);
    audit(trial.site);
    CHECK(trial.site.outdoors.load.free[dust::SizeClass::um_0_5].dust > Picograms{});
}

TEST_CASE("tape holds back coarse dust, an open doorway and an undercut let fine dust through", "[air]")
{
    const auto passes = [](const std::string& labels, const char* id, dust::SizeClass k) {
        Trial trial;
        trial.after(labels);
        refresh_air(trial.site);
        for (const AirPath& path : trial.site.air.paths)
            if (path.from == trial.site.work_room && path.opening && trial.site.openings[*path.opening].plan.id.name == id) return path.passes[k];
        return -1.0;
    };
    CHECK(passes("hvac-off window", "door", dust::SizeClass::um_80) == 1.0);
    // Between rooms air hardly pushes: what is slow in a slit settles there.
    CHECK(passes("hvac-off window close-closet", "closet-door", dust::SizeClass::um_1) > 0.95);
    CHECK(passes("hvac-off window close-closet", "closet-door", dust::SizeClass::um_5) > 0.5);
    CHECK(passes("hvac-off window close-closet", "closet-door", dust::SizeClass::um_5) < passes("hvac-off window close-closet", "closet-door", dust::SizeClass::um_1));
    CHECK(passes("hvac-off window close-closet", "closet-door", dust::SizeClass::um_160) < 0.3);
    const std::string taped = "hvac-off window close-return cover-return";
    CHECK(passes(taped, "return", dust::SizeClass::um_0_5) > 0.0);
    CHECK(passes(taped, "return", dust::SizeClass::um_0_5) > passes(taped, "return", dust::SizeClass::um_1));
    CHECK(passes(taped, "return", dust::SizeClass::um_20) == 0.0);
    CHECK(passes("hvac-off window", "window-1", dust::SizeClass::um_20) == 0.0);
}

constexpr const char* exhaust = R"(
[[opening]]
id = "fan"
title = "Exhaust"
kind = "exhaust"
zone = "bedroom"
wall = "south"
from = "2 ft"
width = "6 in"
height = "6 in"
is-open = true
)";

TEST_CASE("an exhaust lets air out of doors whether the blower runs or not", "[air]")
{
    Trial trial{job::shipped_scenario(exhaust)};
    CHECK(out_through(trial, "fan") > AirFlow{});
    for (const AirPath& path : trial.site.air.paths)
        if (path.opening && trial.site.openings[*path.opening].plan.id.name == "fan") {
            CHECK_FALSE(path.is_return);
            CHECK_FALSE(path.to);
        }
}

TEST_CASE("an exhaust's own fan draws air in through the flap door and lets none out against it", "[air]")
{
    const std::string fan = std::string(exhaust) + "fan-flow = \"120 m3/h\"\n";
    const std::string shut = "hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap";
    Trial drawn{job::shipped_scenario(fan)};
    drawn.after(shut);
    Trial still;
    still.after(shut);
    CHECK(out_through(still, "door") > AirFlow{});
    CHECK(out_through(drawn, "door") < out_through(still, "door") * 0.05);
    CHECK(out_through(drawn, "fan").si == Approx(120.0 / 3600.0));
    CHECK(drawn.site.air.pressure[drawn.site.work_room] < drawn.site.air.pressure[1 - std::min<std::size_t>(drawn.site.work_room, 1)] - 0.5_Pa);

    // A window that stands open lets the fan draw from out of doors: wind then pushes dust out past the flap.
    Trial open{job::shipped_scenario(fan)};
    open.after("hvac-off close-return cover-return close-supply cover-supply close-closet cover-closet flap");
    CHECK(out_through(open, "door") > out_through(still, "door"));
    drawn.then(R"(do = "close-register", opening = "fan")");
    CHECK(out_through(drawn, "fan") < AirFlow{120.0 / 3600.0} * 0.5);
}

TEST_CASE("a flap door's mechanics are worked out once for a run", "[air]")
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap");
    refresh_air(trial.site);
    const std::size_t known = trial.site.flaps.worked_out();
    CHECK(known > 0);
    trial.site.is_air_stale = true;
    refresh_air(trial.site);
    CHECK(trial.site.flaps.worked_out() == known);
}

TEST_CASE("windows and unused doors pass less when they are shut, and least when taped", "[air]")
{
    Trial open;
    open.after("hvac-off");
    Trial shut;
    shut.after("hvac-off window close-closet");
    Trial taped;
    taped.after("hvac-off window close-closet cover-closet").then(R"(do = "tape-seam", opening = "window-1", tape = "tape")");
    for (const char* id : {"window-1", "closet-door"}) {
        INFO(id);
        CHECK(out_through(shut, id) < out_through(open, id) * 0.5);
        CHECK(out_through(taped, id) < out_through(shut, id));
    }
}

TEST_CASE("the cloud is drawn out beside openings and nowhere else", "[air]")
{
    Trial trial;
    trial.after("window");
    refresh_air(trial.site);
    const std::vector<std::size_t> near = cells_near(trial.site, 5);     // the return
    REQUIRE_FALSE(near.empty());
    CHECK(trial.site.cloud_room.leaving[near.front()] > 0.0F);
    const std::size_t middle = trial.site.room().raster.cell_at(trial.site.room().raster.rect().center());
    CHECK(trial.site.cloud_room.leaving[middle] == 0.0F);
}

TEST_CASE("dust in the air goes through duct and filter into the house while the blower runs, and stays when all is shut", "[air]")
{
    const auto airborne = [](Trial& trial) {
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        strew(trial.site, floor, 0, dust::SizeClass::um_5, 1.0_g);
        raise_into_air(trial.site, trial.site.surfaces[floor].free(0, dust::SizeClass::um_5), trial.site.work_room, dust::SizeClass::um_5,
                       trial.site.surfaces[floor].patches[0].free[dust::SizeClass::um_5]);
        pass_time(trial.site, 10.0_min);
        audit(trial.site);
    };
    Trial blown;
    blown.after("window");
    airborne(blown);
    const Amount by_return = blown.site.ledger.crossed(dust::Pathway::return_air)[dust::SizeClass::um_5];
    CHECK(by_return.dust > picograms(0.1_g));
    CHECK(blown.site.duct.load.free[dust::SizeClass::um_5].dust > Picograms{});
    CHECK(blown.site.filter.load.free[dust::SizeClass::um_5].dust > Picograms{});
    Trial shut;
    shut.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet flap");
    airborne(shut);
    CHECK(dust::total(shut.site.ledger.crossed(dust::Pathway::return_air)).dust.count < by_return.dust.count / 50);
    CHECK(shut.site.ledger.on(dust::Side::outside).dust.count < blown.site.ledger.on(dust::Side::outside).dust.count / 10);
    CHECK(shut.site.filter.load.free[dust::SizeClass::um_5].is_zero());
}

TEST_CASE("where fresh dust starts out belongs to the seed, near the tool", "[air]")
{
    const auto places = [](std::uint64_t seed) {
        Site site = build(job::shipped_scenario(), seed);
        Amount nothing;
        const plan::Point tool{2.0_ft, 4.0_ft};
        release_cloud(site, {nothing, site.paint}, true, tool, 1.2_m, dust::SizeClass::um_5, {{1001}, {11}}, 4);
        audit(site);
        CHECK(site.cloud.count() == 4);
        for (std::size_t i = 0; i < 4; ++i) {
            CHECK(std::abs(static_cast<double>(site.cloud.x[i]) - tool.x.si) <= 0.3);
            CHECK(std::abs(static_cast<double>(site.cloud.z[i]) - 1.2) <= 0.3);
        }
        CHECK(site.cloud.amount[0].dust == Picograms{251});     // the four pieces are the whole
        CHECK(site.cloud.amount[3].dust == Picograms{250});
        return site.cloud.x;
    };
    CHECK(places(1) == places(1));
    CHECK(places(1) != places(2));
}

TEST_CASE("registers and doors of other rooms do no harm", "[air]")
{
    const std::string elsewhere = R"(
[[opening]]
id = "house-return"
title = "Return of the house"
kind = "return"
zone = "house"
wall = "north"
from = "2 ft"
width = "1 ft"
height = "8 in"
is-open = true

[[opening]]
id = "front"
title = "Front window"
kind = "window"
zone = "house"
wall = "east"
from = "2 ft"
width = "3 ft"
height = "4 ft"
is-open = true
)";
    Trial trial{job::shipped_scenario(elsewhere)};
    trial.first_dust().then(R"(do = "wait", time = "20 min")");
    CHECK(out_through(trial, "return").si == Approx(return_flow));
    trial.after("hvac-off").then(R"(do = "wait", time = "5 min")");
}

}
