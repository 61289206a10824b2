#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::TapeSeam& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    if (o.is_open && !o.flap) return sentence("{} stands open; there is no seam to tape", o.plan.title);
    if (site.now < site.surfaces[floor_of(site, site.work_room)].wet_until) return to_say("tape does not hold on a wet surface");
    return first_of({must_be_inside(site, by), must_have(site, step.tape, {job::SupplyKindOf::tape, job::SupplyKindOf::masking_tape}, to_say("to tape a seam"))});
}

Done carry_out(Site& site, const job::TapeSeam& step, const Team& by)
{
    OpeningState& o = opening(site, step.opening);
    gather(site, by, middle(site.zones[o.zone].plan, o.plan));
    spend(site, job::TapeSeam::takes);
    o.seam_layers += step.layers;
    if (o.flap && kind_of(site, step.tape) == job::SupplyKindOf::tape) {
        o.flap->is_taped = true;
        set_state(site, "flap-taped", step.opening.name, true);
    }
    containment_changed(site);
    return {};
}

}
