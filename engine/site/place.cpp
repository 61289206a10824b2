#include "site/place.hpp"

#include "core/insist.hpp"

namespace flapdoor::site {

plan::Rect footprint(const job::Zone& zone) { return {zone.west, zone.south, zone.width, zone.depth}; }

plan::Rect along_wall(const job::Zone& zone, job::WallSide wall, Length from, Length width, Length depth)
{
    const plan::Rect floor = footprint(zone);
    switch (wall) {
        case job::WallSide::south: return {floor.west + from, floor.south, width, depth};
        case job::WallSide::north: return {floor.west + from, floor.north() - depth, width, depth};
        case job::WallSide::west: return {floor.west, floor.south + from, depth, width};
        case job::WallSide::east: return {floor.east() - depth, floor.south + from, depth, width};
    }
    insist(false, "a wall is one of four");
    return {};
}

plan::Rect footprint(const job::Scenario& scenario, const job::Component& component)
{
    const job::Zone* zone = find_by_id(scenario.zones, component.zone);
    insist(zone != nullptr, "a checked scenario knows its zones");
    if (component.kind == job::ComponentKindOf::ceiling) return footprint(*zone);
    if (const job::Opening* opening = find_by_id(scenario.openings, component.opening))
        return along_wall(*zone, opening->wall, opening->from, opening->width, Length{});
    return along_wall(*zone, component.wall, component.from, component.width, Length{});
}

plan::Rect footprint(const job::Scenario& scenario, const job::Sill& sill)
{
    const job::Opening* window = find_by_id(scenario.openings, sill.window);
    insist(window != nullptr, "a checked scenario knows its windows");
    const job::Zone* zone = find_by_id(scenario.zones, window->zone);
    insist(zone != nullptr, "a checked scenario knows its zones");
    return along_wall(*zone, window->wall, window->from, window->width, sill.depth);
}

plan::Point middle(const job::Zone& zone, const job::Opening& opening)
{
    return along_wall(zone, opening.wall, opening.from, opening.width, Length{}).center();
}

}
