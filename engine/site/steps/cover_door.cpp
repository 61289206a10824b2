#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CoverDoor& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.is_covered) return o.plan.title + " is covered already";
    if (o.plan.kind == job::OpeningKindOf::door && o.is_open) return o.plan.title + " stands open; close it first";
    return first_of({must_be(o, {job::OpeningKindOf::door}, "a door"), must_be_inside(site, by),
                     must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, "to cover a door")});
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
