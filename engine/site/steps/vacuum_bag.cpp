#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumBag& step, const Team& by)
{
    const Bag* bag = find_bag(site, step.bag);
    if (bag == nullptr) return to_say("there is no such bag yet");
    if (bag->is_out) return to_say("it is out already");
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum a bag"))});
}

Done carry_out(Site& site, const job::VacuumBag& step, const Team& by)
{
    work_at(site, by, site.room().raster.rect().center(), job::VacuumBag::takes);
    Bag& bag = *find_bag(site, step.bag);
    constexpr double vacuumed_skin = 0.9;   // smooth plastic, both sides (judgment)
    pour(site, bag.skin, site.vacuum, vacuumed_skin);
    bag.is_skin_clean = true;
    return {};
}

}
