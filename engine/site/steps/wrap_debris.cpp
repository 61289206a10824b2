#include "site/bagging.hpp"
#include "site/hands.hpp"
#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WrapDebris& step, const Team& by)
{
    if (std::find(site.disturbed.begin(), site.disturbed.end(), step.component.name) == site.disturbed.end()) return to_say("nothing has been taken off that component yet");
    if (find_bag(site, step.bag) != nullptr) return to_say("there is a bag or bundle of that name already");
    return first_of({must_be_inside(site, by), must_have(site, step.sheeting, {job::SupplyKindOf::sheeting}, to_say("to wrap debris"))});
}

Done carry_out(Site& site, const job::WrapDebris& step, const Team& by)
{
    const job::Component& component = *find_by_id(site.scenario.components, step.component);
    work_at(site, by, footprint(site.scenario, component).center(), job::WrapDebris::takes);
    Bag& bundle = start_bag(site, step.bag, true);
    bundle.fill = 0.5;
    bundle.is_closed = true;
    bundle.is_gooseneck = true;   // taped on all edges: as tight as a twisted neck
    set_state(site, "waste-contained", step.bag.name, true);
    dust_the_skin(site, bundle);
    return {};
}

}
