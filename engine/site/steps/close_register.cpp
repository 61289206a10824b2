#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CloseRegister& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (Refusal wrong = must_be(o, {job::OpeningKindOf::supply, job::OpeningKindOf::return_air, job::OpeningKindOf::exhaust}, to_say("a register"))) return wrong;
    if (o.is_covered) return to_say("a covered register cannot be closed; its louvers are under the sheeting");
    if (!o.is_open) return sentence("{} is closed already", o.plan.title);
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::CloseRegister& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::CloseRegister::takes);
    o.is_open = false;
    set_state(site, "register-closed", step.opening.name, true);
    containment_changed(site);
    return {};
}

}
