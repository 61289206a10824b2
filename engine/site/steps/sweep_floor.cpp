#include "dust/resuspension.hpp"
#include "site/breathing.hpp"
#include "site/clothes.hpp"
#include "site/hands.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::SweepFloor& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.broom, {job::SupplyKindOf::broom}, to_say("to sweep"))});
}

Done carry_out(Site& site, const job::SweepFloor&, const Team& by)
{
    std::vector<std::size_t> all(site.room().top.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    for (const job::PersonId& id : by) soil_clothes(site, worker(site, id), all, dust::Stirring::working, job::SweepFloor::takes);
    for (const Spot& spot : site.room().top) {
        Surface& surface = site.surfaces[spot.surface];
        if (surface.role != SurfaceRole::floor && surface.role != SurfaceRole::sheeting) continue;
        for (const dust::SizeClass k : dust::all_classes()) {
            const dust::Swept swept = dust::dry_sweeping(k);
            const Amount there = surface.patches[spot.patch].free[k];
            raise_near(site, by, surface.free(spot.patch, k), site.work_room, k, part(there, std::min(most_let_go, swept.to_air * site.uncertain.raised)));
            site.ledger.move(surface.free(spot.patch, k), site.store.free(k), k, part(there, swept.to_pile));
        }
    }
    work_at(site, by, site.room().raster.rect().center(), job::SweepFloor::takes);
    return {};
}

}
