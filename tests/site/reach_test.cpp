#include "trial.hpp"

#include "site/place.hpp"

namespace flapdoor::site {

namespace {

/// The shortest way from a component to floor of the work room that lies bare, found cell by cell.
Length nearest_bare(const Site& site, const std::string& component)
{
    const plan::Rect from = footprint(site.scenario, *find_by_id(site.scenario.components, job::ComponentId{component}));
    Length nearest{1e9};
    for (std::size_t cell = 0; cell < site.room().top.size(); ++cell)
        if (site.surfaces[site.room().top[cell].surface].role == SurfaceRole::floor) nearest = std::min(nearest, plan::distance(from, site.room().raster.center(cell)));
    return nearest;
}

Played lay(Trial& trial, const std::string& reach) { return trial.play("do = \"lay-floor-sheet\", sheeting = \"poly\", reach = \"" + reach + "\""); }

constexpr const char* components[] = {"casing-1", "casing-2", "sash-1", "sash-2"};

}

TEST_CASE("sheeting laid to six feet measures at least six feet from every component", "[reach]")
{
    Trial trial;
    const Played played = lay(trial, "6 ft");
    for (const char* component : components) {
        INFO(component);
        const double reach = played.measure("reach", component);
        CHECK(reach >= (6.0_ft).si);
        CHECK(reach < (6.0_ft).si + 0.2);       // and no more than a cell beyond: the east of the room lies bare
        CHECK(reach == Approx(nearest_bare(trial.site, component).si));
    }
}

TEST_CASE("sheeting laid to four feet measures less than six", "[reach]")
{
    Trial trial;
    const Played played = lay(trial, "4 ft");
    for (const char* component : components) {
        INFO(component);
        CHECK(played.measure("reach", component) >= (4.0_ft).si);
        CHECK(played.measure("reach", component) < (6.0_ft).si);
    }
}

TEST_CASE("a wall ends the sheeting but not its reach; the far corner counts", "[reach]")
{
    // The room is 10 ft by 13 ft. Both windows are in its west wall; the south window begins 2 ft from the corner.
    Trial trial;
    const double nearly = lay(trial, "9 ft").measure("reach", "casing-1");
    CHECK(nearly == Approx((9.0_ft).si).margin(0.15));
    // 12 ft from the north window reach the farthest corner of the room's south-east: nothing lies bare.
    Trial whole;
    CHECK(lay(whole, "16 ft").measure("reach", "casing-2") >= (16.0_ft).si);
    CHECK(nearest_bare(whole.site, "casing-2").si > 1e6);
}

TEST_CASE("the sheeting's edge runs round the ends of a component at the same distance", "[reach]")
{
    Trial trial;
    lay(trial, "5 ft");
    const plan::Rect casing = footprint(trial.site.scenario, *find_by_id(trial.site.scenario.components, job::ComponentId{"casing-2"}));
    int corner_cells = 0;
    for (std::size_t cell = 0; cell < trial.site.room().top.size(); ++cell) {
        const plan::Point at = trial.site.room().raster.center(cell);
        const SurfaceRole top = trial.site.surfaces[trial.site.room().top[cell].surface].role;
        if (top != SurfaceRole::floor && top != SurfaceRole::sheeting) continue;
        const bool is_beyond_the_end = at.y > casing.north() + 0.5_ft && at.x > 0.5_ft;
        if (!is_beyond_the_end) continue;
        const Length south = plan::distance(footprint(trial.site.scenario, *find_by_id(trial.site.scenario.components, job::ComponentId{"casing-1"})), at);
        const bool is_near = plan::distance(casing, at) <= 5.0_ft || south <= 5.0_ft;
        CHECK((top == SurfaceRole::sheeting) == is_near);
        ++corner_cells;
    }
    CHECK(corner_cells > 50);
}

TEST_CASE("sheeting lies around furniture, and what is moved out later leaves its place bare", "[reach]")
{
    Trial trial;
    lay(trial, "16 ft");
    const std::size_t under_dresser = trial.site.room().raster.cell_at({7.0_ft, 12.0_ft});
    CHECK(trial.site.surfaces[trial.site.room().top[under_dresser].surface].role == SurfaceRole::object_top);
    trial.after("dresser");
    CHECK(trial.site.surfaces[trial.site.room().top[under_dresser].surface].role == SurfaceRole::floor);
    CHECK(nearest_bare(trial.site, "casing-2") < 16.0_ft);
}

}
