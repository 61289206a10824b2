#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::PostSigns& step, const Team&)
{
    const OpeningState& o = opening(site, step.at);
    if (o.has_sign) return sentence("signs hang at {} already", o.plan.title);
    return must_be(o, {job::OpeningKindOf::door}, to_say("a door"));
}

Done carry_out(Site& site, const job::PostSigns& step, const Team&)
{
    spend(site, job::PostSigns::takes);
    opening(site, step.at).has_sign = true;
    set_state(site, "signs-up", step.at.name, true);
    return {};
}

}
