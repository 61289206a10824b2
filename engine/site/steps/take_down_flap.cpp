#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::TakeDownFlap& step, const Team&)
{
    if (!opening(site, step.opening).flap) return to_say("no flap door hangs there");
    return std::nullopt;
}

Done carry_out(Site& site, const job::TakeDownFlap& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    o.flap.reset();
    o.is_open = true;
    set_state(site, "flap-hung", step.opening.name, false);
    set_state(site, "flap-taped", step.opening.name, false);
    containment_changed(site);
    spend(site, job::TakeDownFlap::takes);
    return {};
}

}
