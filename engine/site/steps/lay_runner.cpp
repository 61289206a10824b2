#include "site/hands.hpp"
#include "site/place.hpp"

#include <utility>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::LayRunner& step, const Team&)
{
    const job::Zone* zone = find_by_id(site.scenario.zones, step.zone);
    if (zone->role == job::ZoneRole::work_room) return to_say("a runner lies outside the work room");
    return must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, to_say("as a runner"));
}

Done carry_out(Site& site, const job::LayRunner& step, const Team&)
{
    const auto index = static_cast<std::size_t>(find_by_id(site.scenario.zones, step.zone) - site.scenario.zones.data());
    const Zone& zone = site.zones[index];
    const OpeningState& door = entrance(site);
    const plan::Point from = middle(site.zones[door.zone].plan, door.plan);
    Surface runner;
    runner.name = "runner";
    runner.role = SurfaceRole::runner;
    runner.zone = index;
    runner.patch_area = zone.raster.cell_area();
    for (const std::size_t cell : zone.raster.cells_within({from.x, from.y, {}, {}}, step.length))
        if (site.surfaces[zone.top[cell].surface].role == SurfaceRole::floor) runner.cells.push_back(cell);
    if (runner.cells.empty()) return {false, to_say("the runner would not reach the entrance")};
    runner.patches.resize(runner.cells.size());
    runner.is_edge.resize(runner.cells.size(), 0);
    runner.is_cleaned.resize(runner.cells.size(), 0);
    runner.account = site.ledger.open(runner.name, dust::Side::outside);
    spend(site, job::LayRunner::takes);
    site.surfaces.push_back(std::move(runner));
    refresh_tops(site);
    return {};
}

}
