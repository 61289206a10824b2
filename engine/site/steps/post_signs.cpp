#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::PostSigns& step, const Team&)
{
    const OpeningState& o = opening(site, step.at);
    if (o.has_sign) return "signs hang at " + o.plan.title + " already";
    return must_be(o, {job::OpeningKindOf::door}, "a door");
}

Done carry_out(Site& site, const job::PostSigns& step, const Team&)
{
    spend(site, job::PostSigns::takes);
    opening(site, step.at).has_sign = true;
    set_state(site, "signs-up", step.at.name, true);
    return {};
}

}
