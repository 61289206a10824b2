#include "dust/bag.hpp"
#include "site/bagging.hpp"
#include "site/breathing.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr double picked_chips = 0.97;    // by hand and scoop (judgment)
constexpr double picked_coarse = 0.3;    // of what is coarser than 160 um

}

Refusal why_not(const Site& site, const job::BagDebris& step, const Team& by)
{
    const Bag* bag = find_bag(site, step.bag);
    if (bag != nullptr && bag->is_out) return to_say("that bag is out already");
    if (bag != nullptr && bag->is_closed) return to_say("that bag is closed already");
    return first_of({must_be_inside(site, by), must_have(site, step.kind, {job::SupplyKindOf::bag, job::SupplyKindOf::trash_bag}, to_say("to hold debris"))});
}

Done carry_out(Site& site, const job::BagDebris& step, const Team& by)
{
    work_at(site, by, site.room().raster.rect().center(), job::BagDebris::takes);
    Bag& bag = start_bag(site, step.bag, kind_of(site, step.kind) == job::SupplyKindOf::bag);
    bag.fill = step.fill;
    bag.filled = site.now;
    bag.is_damp = std::any_of(site.sheeting.begin(), site.sheeting.end(), [&](std::size_t s) { return site.now < site.surfaces[s].wet_until; });
    const double hangs = std::min(most_let_go, dust::head_space_share(bag.is_damp ? dust::Drop::gentle_misted : dust::Drop::gentle_dry) * site.uncertain.handling);
    for (const Spot& spot : site.room().top) {
        Surface& surface = site.surfaces[spot.surface];
        for (const dust::SizeClass k : {dust::SizeClass::um_160, dust::SizeClass::chips}) {
            const Amount picked = part(surface.patches[spot.patch].free[k], k == dust::SizeClass::chips ? picked_chips : picked_coarse);
            site.ledger.move(surface.free(spot.patch, k), bag.content.free(k), k, picked);
        }
        for (const dust::SizeClass k : {dust::SizeClass::um_2_5, dust::SizeClass::um_5, dust::SizeClass::um_10})
            raise_near(site, by, surface.free(spot.patch, k), site.work_room, k, part(surface.patches[spot.patch].free[k], hangs));
    }
    dust_the_skin(site, bag);
    return {};
}

}
