#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::OpenWindow& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.is_open) return sentence("{} is open already", o.plan.title);
    return first_of({must_be(o, {job::OpeningKindOf::window}, to_say("a window")), must_be_inside(site, by)});
}

Done carry_out(Site& site, const job::OpenWindow& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::OpenWindow::takes);
    o.is_open = true;
    set_state(site, "window-closed", step.opening.name, false);
    containment_changed(site);
    return {};
}

}
