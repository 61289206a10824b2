#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CleanBeyond& step, const Team&)
{
    const job::Supply* supply = find_supply(site, step.vacuum);
    if (supply == nullptr || (supply->kind != job::SupplyKindOf::hepa_vacuum && supply->kind != job::SupplyKindOf::shop_vacuum)) return to_say("a vacuum is needed to clean beyond the work area");
    return std::nullopt;
}

Done carry_out(Site& site, const job::CleanBeyond& step, const Team&)
{
    const OpeningState& door = entrance(site);
    const std::size_t beyond = door.zone == site.work_room ? *door.leads_to : door.zone;
    const Zone& hall = site.zones[beyond];
    const plan::Rect threshold = along_wall(site.zones[door.zone].plan, door.plan.wall, door.plan.from, door.plan.width, Length{});
    Area area{};
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const Surface& surface = site.surfaces[s];
        if (surface.zone != beyond || (surface.role != SurfaceRole::floor && surface.role != SurfaceRole::runner) || !surface.is_there) continue;
        Part part{s, {}};
        for (const std::size_t p : bare_part(site, s).patches)
            if (plan::distance(threshold, hall.raster.center(surface.cells[p])) <= step.reach) part.patches.push_back(p);
        if (part.patches.empty()) continue;
        area += vacuum(site, part, {.kind = vacuum_kind(site, step.vacuum), .minutes_per_square_meter = 3.0});
        if (!step.mop.is_empty()) mop(site, part, Rinsing::separate_water, 0);
        mark_cleaned(site, part);
    }
    Length margin = hall.plan.width + hall.plan.depth;   // to the nearest floor that is not clean, or all of it
    for (std::size_t cell = 0; cell < hall.top.size(); ++cell) {
        const Surface& top = site.surfaces[hall.top[cell].surface];
        const bool is_floor = top.role == SurfaceRole::floor || top.role == SurfaceRole::runner;
        if (is_floor && top.is_cleaned[hall.top[cell].patch] == 0) margin = std::min(margin, plan::distance(threshold, hall.raster.center(cell)));
    }
    measure(site, "cleaned-margin", "", job::MeasureKind::length, margin.si);
    pass_time(site, job::CleanBeyond::takes * std::max(1.0, area.si));
    return {};
}

}
