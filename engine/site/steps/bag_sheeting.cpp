#include "site/bagging.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::BagSheeting& step, const Team& by)
{
    if (site.sheet != SheetState::folded) return to_say("the sheeting is not folded yet");
    if (find_bag(site, step.bag) != nullptr) return to_say("there is a bag of that name already");
    return first_of({must_be_inside(site, by), must_have(site, step.kind, {job::SupplyKindOf::bag, job::SupplyKindOf::trash_bag}, to_say("to hold sheeting"))});
}

Done carry_out(Site& site, const job::BagSheeting& step, const Team& by)
{
    work_at(site, by, site.room().raster.rect().center(), job::BagSheeting::takes);
    Bag& bag = start_bag(site, step.bag, kind_of(site, step.kind) == job::SupplyKindOf::bag);
    bag.fill = 0.6;
    bag.holds_sheeting = true;
    bag.filled = site.now;
    pour(site, site.bundle, bag.content, 1.0);
    dust_the_skin(site, bag);
    site.sheet = SheetState::bagged;
    return {};
}

}
