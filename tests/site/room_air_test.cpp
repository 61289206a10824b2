#include "trial.hpp"

#include "site/air_paths.hpp"
#include "site/passing_time.hpp"
#include "site/room_air.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

std::size_t opening_named(const Site& site, const std::string& id)
{
    for (std::size_t i = 0; i < site.openings.size(); ++i)
        if (site.openings[i].plan.id.name == id) return i;
    FAIL("no opening " << id);
    return 0;
}

/// Mean speed of the air in the cells near an opening, toward it, m/s; at least 0.3 m away.
double speed_toward(const Site& site, const std::string& id)
{
    const dust::CloudRoom& room = site.cloud_room;
    const std::size_t index = opening_named(site, id);
    const std::vector<std::size_t> cells = cells_near(site, index);
    plan::Point middle;
    for (const std::size_t cell : cells) {
        middle.x += room.raster.center(cell).x * (1.0 / static_cast<double>(cells.size()));
        middle.y += room.raster.center(cell).y * (1.0 / static_cast<double>(cells.size()));
    }
    double sum = 0.0;
    std::size_t counted = 0;
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
        const plan::Point at = room.raster.center(cell);
        const double far = plan::distance(at, middle).si;
        if (far < 0.8 || far > 1.4 || room.free_height(cell) < 1.0F) continue;
        const double u = room.flow.east[cell] / (room.raster.cell_depth().si * static_cast<double>(room.free_height(cell)));
        const double v = room.flow.north[cell] / (room.raster.cell_width().si * static_cast<double>(room.free_height(cell)));
        sum += (u * (middle.x - at.x).si + v * (middle.y - at.y).si) / far;
        ++counted;
    }
    REQUIRE(counted > 20);
    return sum / static_cast<double>(counted);
}

/// Fresh parcels of one class at a place; so many that a share can be told.
void puff(Trial& trial, plan::Point where, dust::SizeClass k, int parcels)
{
    Amount nothing;
    release_cloud(trial.site, {nothing, trial.site.paint}, true, where, 1.2_m, k, {picograms(1.0_g), picograms(0.01_g)}, parcels);
}

}

TEST_CASE("the air of the room moves toward a running return, and stops doing so when it is covered", "[air]")
{
    Trial open;
    open.after("window");
    refresh_air(open.site);
    CHECK(speed_toward(open.site, "return") > 0.002);
    Trial covered;
    covered.after("window close-return cover-return close-supply cover-supply");
    refresh_air(covered.site);
    CHECK(std::abs(speed_toward(covered.site, "return")) < 0.1 * speed_toward(open.site, "return"));
}

TEST_CASE("what flows into the sides of a cell and what is let in there goes out of it again", "[air]")
{
    Trial trial;    // window open, blower on: every kind of path there is
    refresh_air(trial.site);
    const dust::CloudRoom& room = trial.site.cloud_room;
    const std::size_t columns = room.raster.columns();
    double in = 0.0;
    double out = 0.0;
    for (const AirPath& path : trial.site.air.paths) {
        if (path.to == trial.site.work_room) in += path.flow.si;
        if (path.from == trial.site.work_room) out += path.flow.si;
    }
    for (const FreshAir& fresh : trial.site.air.fresh) in += fresh.flow.si;
    CHECK(in == Approx(out).epsilon(1e-4));     // drafts go as much back as forth
    // Only cells near an opening or a wall are a source; the middle of the room is not.
    const std::size_t middle = room.raster.cell_at(room.raster.rect().center());
    const double left = room.flow.east[middle] - room.flow.east[middle - 1] + room.flow.north[middle] - room.flow.north[middle - columns];
    CHECK(std::abs(left) < 1e-3 * out / static_cast<double>(room.raster.size()) + std::abs(in - out));
}

TEST_CASE("dust on the return's side of the room is taken sooner than dust on the other side", "[air]")
{
    const auto taken = [](plan::Point where) {
        Trial trial;
        trial.after("window");
        puff(trial, where, dust::SizeClass::um_1, 400);
        pass_time(trial.site, 3.0_min, {false});
        audit(trial.site);
        return dust::total(trial.site.ledger.crossed(dust::Pathway::return_air)).dust.count;
    };
    CHECK(taken({3.0_ft, 11.0_ft}) > 2 * taken({8.0_ft, 2.0_ft}));
}

TEST_CASE("the table of steps is kept while nothing changes, and made anew when something does", "[air]")
{
    Trial trial;
    trial.after("window");
    puff(trial, {5.0_ft, 6.0_ft}, dust::SizeClass::um_1, 8);
    pass_time(trial.site, 10.0_s);
    const dust::CellStep* before = trial.site.room_air.table.cells.data();
    REQUIRE(before != nullptr);
    pass_time(trial.site, 20.0_s);
    CHECK(trial.site.room_air.table.cells.data() == before);
    const std::size_t factored = trial.site.room_air.solver.factored();
    trial.site.is_air_stale = true;
    pass_time(trial.site, 10.0_s);
    CHECK(trial.site.room_air.solver.factored() == factored);   // the same barriers
    CHECK_FALSE(trial.site.room_air.table.cells.empty());
}

TEST_CASE("chance shares out among the paths that draw on one cell", "[air]")
{
    Trial trial;
    trial.after("window");
    refresh_air(trial.site);
    const Site& site = trial.site;
    const auto two = [&](std::size_t cell) {
        return std::count_if(site.room_air.outlets.begin(), site.room_air.outlets.end(), [&](const RoomAir::Outlet& outlet) { return std::binary_search(outlet.cells.begin(), outlet.cells.end(), cell); });
    };
    std::size_t cell = 0;
    while (cell < site.cloud_room.raster.size() && two(cell) < 2) ++cell;
    REQUIRE(cell < site.cloud_room.raster.size());
    double all = 0.0;
    double first = 0.0;
    const AirPath* path = nullptr;
    for (const RoomAir::Outlet& outlet : site.room_air.outlets) {
        if (!std::binary_search(outlet.cells.begin(), outlet.cells.end(), cell)) continue;
        if (path == nullptr) {
            path = &site.air.paths[outlet.path];
            first = outlet.rate;
        }
        all += outlet.rate;
    }
    CHECK(&path_taken(site, cell, first / all * 0.999) == path);
    CHECK(&path_taken(site, cell, first / all * 1.001) != path);
    CHECK(static_cast<double>(site.cloud_room.leaving[cell]) == Approx(all));
}

}
