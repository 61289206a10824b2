#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::HangFlap& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.flap) return to_say("a flap door hangs there already");
    if (o.is_covered) return sentence("{} is covered; a flap needs the doorway", o.plan.title);
    return first_of({must_be(o, {job::OpeningKindOf::door}, to_say("a door")), must_be_inside(site, by),
                     must_have(site, step.sheeting, {job::SupplyKindOf::sheeting, job::SupplyKindOf::drop_cloth}, to_say("for a flap door"))});
}

Done carry_out(Site& site, const job::HangFlap& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::HangFlap::takes);
    o.is_open = true;
    o.flap = flap_of(step);
    set_state(site, "flap-hung", step.opening.name, true);
    set_state(site, "flap-taped", step.opening.name, step.is_taped);
    set_state(site, "door-closed", step.opening.name, false);
    containment_changed(site);
    return {};
}

}
