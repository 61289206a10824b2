#include "trial.hpp"

#include "site/air_paths.hpp"
#include "site/passing_time.hpp"

#include <cmath>

namespace flapdoor::site {

namespace {

/// Air that leaves the work room through an opening.
AirFlow out_through(Trial& trial, const std::string& id)
{
    if (trial.site.is_air_stale) refresh_air(trial.site);
    AirFlow sum{};
    for (const AirPath& path : trial.site.air.paths)
        if (path.from == trial.site.work_room && trial.site.openings[path.opening].plan.id.name == id) sum += path.flow;
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
