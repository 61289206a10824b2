#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CloseDoor& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.plan.kind == job::OpeningKindOf::door && !o.is_open) return sentence("{} is closed already", o.plan.title);
    if (o.flap) return to_say("the flap door hangs in it");
    return first_of({must_be(o, {job::OpeningKindOf::door}, to_say("a door")), must_be_inside(site, by)});
}

Done carry_out(Site& site, const job::CloseDoor& step, const Team&)
{
    spend(site, job::CloseDoor::takes);
    opening(site, step.opening).is_open = false;
    set_state(site, "door-closed", step.opening.name, true);
    containment_changed(site);
    return {};
}

}
