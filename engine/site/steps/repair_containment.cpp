#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::RepairContainment& step, const Team&)
{
    const OpeningState& o = opening(site, step.opening);
    const bool is_loose = (o.is_covered && !o.is_cover_taped) || (o.flap && !o.flap->is_taped);
    if (!is_loose) return sentence("nothing has come loose at {}", o.plan.title);
    return std::nullopt;
}

Done carry_out(Site& site, const job::RepairContainment& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    work_at(site, by, middle(site.zones[o.zone].plan, o.plan), job::RepairContainment::takes);
    o.is_cover_taped = o.is_covered;
    if (o.flap) o.flap->is_taped = true;
    if (o.is_covered) set_state(site, o.plan.kind == job::OpeningKindOf::door ? "door-covered" : "register-covered", step.opening.name, true);
    containment_changed(site);
    return {};
}

}
