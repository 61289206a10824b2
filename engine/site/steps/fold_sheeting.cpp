#include "dust/resuspension.hpp"
#include "site/breathing.hpp"
#include "site/clothes.hpp"
#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::FoldSheeting&, const Team& by)
{
    if (site.sheet != SheetState::laid) return to_say("no sheeting lies on the floor");
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::FoldSheeting& step, const Team& by)
{
    gather(site, by, site.room().raster.rect().center());
    for (const std::size_t s : site.sheeting)
        for (const job::PersonId& id : by) soil_clothes(site, worker(site, id), site.surfaces[s].cells, dust::Stirring::working, job::FoldSheeting::takes);
    std::vector<std::size_t> taken_up = site.sheeting;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s)
        if (site.surfaces[s].role == SurfaceRole::object_cover && site.surfaces[s].is_there && site.surfaces[s].zone == site.work_room) taken_up.push_back(s);
    for (const std::size_t s : taken_up) site.surfaces[s].is_there = false;
    refresh_tops(site);   // what spills now meets the floor
    for (const std::size_t s : taken_up) {
        Surface& sheet = site.surfaces[s];
        const bool is_wet = site.now < sheet.wet_until;
        const dust::SheetLoss loss = dust::sheet_removal(step.dirty_side == job::DirtySide::outward ? dust::SheetHandling::dry_balled_up
                                                         : is_wet                                  ? dust::SheetHandling::misted_folded_inward
                                                                                                   : dust::SheetHandling::dry_folded_inward);
        const double flies = std::min(most_let_go, loss.to_air * site.uncertain.handling);
        const double spill = loss.to_floor * site.uncertain.handling * (site.is_sheet_taped ? 1.0 : 3.0);   // a loose sheet let dust under its edges
        for (std::size_t p = 0; p < sheet.patches.size(); ++p) {
            for (const dust::SizeClass k : dust::all_classes()) {
                Amount& free = sheet.patches[p].free[k];
                if (k <= dust::SizeClass::um_20) raise_near(site, by, sheet.free(p, k), site.work_room, k, part(free, flies));
                const double slides = k == dust::SizeClass::chips ? 5.0 : 1.0;   // loose chips slide off the fold
                land(site, sheet.free(p, k), site.work_room, sheet.cells[p], k, part(free, std::min(most_let_go, spill * slides)));
                site.ledger.move(sheet.free(p, k), site.bundle.free(k), k, free);
                site.ledger.move(sheet.bound(p, k), site.bundle.free(k), k, sheet.patches[p].bound[k]);
            }
        }
    }
    site.sheet = SheetState::folded;
    pass_time(site, job::FoldSheeting::takes);
    set_state(site, "floor-covered", "", false);
    containment_changed(site);
    return {};
}

}
