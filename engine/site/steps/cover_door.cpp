#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CoverDoor& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.is_covered) return sentence("{} is covered already", o.plan.title);
    if (o.plan.kind == job::OpeningKindOf::door && o.is_open) return sentence("{} stands open; close it first", o.plan.title);
    return first_of({must_be(o, {job::OpeningKindOf::door}, to_say("a door")), must_be_inside(site, by),
                     must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, to_say("to cover a door"))});
}

Done carry_out(Site& site, const job::CoverDoor& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::CoverDoor::takes);
    o.is_covered = true;
    o.is_cover_taped = step.is_taped && kind_of(site, step.sheeting) == job::SupplyKindOf::sheeting;
    set_state(site, "door-covered", step.opening.name, o.is_cover_taped);
    containment_changed(site);
    return {};
}

}
