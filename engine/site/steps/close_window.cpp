#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CloseWindow& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.plan.kind == job::OpeningKindOf::window && !o.is_open) return sentence("{} is closed already", o.plan.title);
    return first_of({must_be(o, {job::OpeningKindOf::window}, to_say("a window")), must_be_inside(site, by)});
}

Done carry_out(Site& site, const job::CloseWindow& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::CloseWindow::takes);
    o.is_open = false;
    set_state(site, "window-closed", step.opening.name, true);
    containment_changed(site);
    return {};
}

}
