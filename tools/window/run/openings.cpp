#include "window/run/openings.hpp"

#include "core/insist.hpp"
#include "window/run/moment.hpp"

#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::window {

PlanOpening plan_opening(const job::Scenario& scenario, const job::Opening& opening)
{
    const job::Zone* zone = find_by_id(scenario.zones, opening.zone);
    insist(zone != nullptr, "a checked scenario knows its zones");
    const PaperBox line = paper(site::along_wall(*zone, opening.wall, opening.from, opening.width, Length{}));
    const bool runs_up = opening.wall == job::WallSide::south || opening.wall == job::WallSide::east;
    return {runs_up ? line.low : line.high, runs_up ? line.high : line.low, wall_thickness};
}

PaperBox strip_along(const PlanOpening& opening, double off, double depth, bool is_beyond)
{
    const PaperPoint side = left_of(along(opening.from, opening.to)) * (is_beyond ? -1.0 : 1.0);
    const PaperPoint a = opening.from + side * off;
    const PaperPoint b = opening.to + side * (off + depth);
    return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

std::vector<PlanWall> plan_walls(const std::vector<job::Zone>& zones)
{
    std::vector<PlanWall> walls;
    for (const job::Zone& zone : zones) {
        const PaperBox floor = paper(site::footprint(zone));
        const std::vector<PaperPoint> c{floor.low, {floor.high.x, floor.low.y}, floor.high, {floor.low.x, floor.high.y}};
        for (std::size_t i = 0; i < c.size(); ++i) walls.push_back({c[i], c[(i + 1) % c.size()], wall_thickness});
    }
    return walls;
}

const job::Opening* way_in(const job::Scenario& scenario)
{
    const auto role_of = [&](const job::ZoneId& id) {
        const job::Zone* zone = find_by_id(scenario.zones, id);
        return zone ? zone->role : job::ZoneRole::closet;
    };
    for (const job::Opening& opening : scenario.openings) {
        if (opening.kind != job::OpeningKindOf::door) continue;
        const job::ZoneRole one = role_of(opening.zone);
        const job::ZoneRole other = role_of(opening.leads_to);
        if ((one == job::ZoneRole::work_room && other == job::ZoneRole::passage) ||
            (other == job::ZoneRole::work_room && one == job::ZoneRole::passage))
            return &opening;
    }
    return nullptr;
}

}
