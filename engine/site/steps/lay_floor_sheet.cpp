#include "site/hands.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <utility>

namespace flapdoor::site {

namespace {

constexpr Time unfolding = 5.0_min;

/// The patches at which the sheeting ends: beside a wall, a thing or bare floor.
void mark_outline(const plan::Raster& raster, const std::vector<bool>& is_covered, Surface& sheet)
{
    for (std::size_t p = 0; p < sheet.cells.size(); ++p) {
        const std::size_t column = raster.column(sheet.cells[p]);
        const std::size_t row = raster.row(sheet.cells[p]);
        const bool is_inner = column > 0 && row > 0 && column + 1 < raster.columns() && row + 1 < raster.rows() && is_covered[sheet.cells[p] - 1]
                              && is_covered[sheet.cells[p] + 1] && is_covered[sheet.cells[p] - raster.columns()] && is_covered[sheet.cells[p] + raster.columns()];
        sheet.is_edge[p] = !is_inner;
    }
}

}

Refusal why_not(const Site& site, const job::LayFloorSheet& step, const Team& by)
{
    if (site.sheet == SheetState::folded) return to_say("the old sheeting lies folded in the room; bag it first");
    return first_of({must_be_inside(site, by), must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, to_say("on the floor"))});
}

Done carry_out(Site& site, const job::LayFloorSheet& step, const Team& by)
{
    const Zone& room = site.room();
    gather(site, by, room.raster.rect().center());
    std::vector<bool> is_covered(room.raster.size(), false);
    for (const job::Component& component : site.scenario.components) {
        if (component.zone != room.plan.id) continue;
        for (const std::size_t cell : room.raster.cells_within(footprint(site.scenario, component), step.reach)) is_covered[cell] = true;
    }
    Surface sheet;
    sheet.name = "floor sheeting";
    sheet.role = SurfaceRole::sheeting;
    sheet.zone = site.work_room;
    sheet.patch_area = room.raster.cell_area();
    sheet.layers = step.layers;
    for (std::size_t cell = 0; cell < is_covered.size(); ++cell) {
        const SurfaceRole below = site.surfaces[room.top[cell].surface].role;
        if (is_covered[cell] && (below == SurfaceRole::floor || below == SurfaceRole::sheeting || below == SurfaceRole::sill)) sheet.cells.push_back(cell);
    }
    if (sheet.cells.empty()) return {false, to_say("no floor lies within that reach")};
    sheet.patches.resize(sheet.cells.size());
    sheet.is_edge.resize(sheet.cells.size(), 0);
    sheet.is_cleaned.resize(sheet.cells.size(), 0);
    mark_outline(room.raster, is_covered, sheet);
    sheet.account = site.ledger.open(sheet.name, dust::Side::inside);
    spend(site, (unfolding + job::LayFloorSheet::takes * sheet.area().si) * static_cast<double>(step.layers));
    site.sheeting.push_back(site.surfaces.size());
    site.surfaces.push_back(std::move(sheet));
    site.sheet = SheetState::laid;
    site.is_sheet_porous = kind_of(site, step.sheeting) == job::SupplyKindOf::drop_cloth;
    site.is_sheet_taped = step.is_taped && kind_of(site, step.sheeting) == job::SupplyKindOf::sheeting;
    refresh_tops(site);
    for (const job::Component& component : site.scenario.components)
        if (component.zone == site.room().plan.id)
            measure(site, "reach", component.id.name, job::MeasureKind::length, sheeting_reach(site, component).si);
    set_state(site, "floor-covered", "", site.is_sheet_taped);
    containment_changed(site);
    return {};
}

}
