#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::LayTackPad& step, const Team&)
{
    if (site.has_tack_pad) return to_say("a tack pad lies there already");
    return must_have(site, step.pad, {job::SupplyKindOf::tack_pad, job::SupplyKindOf::doormat}, to_say("to step on at the entrance"));
}

Done carry_out(Site& site, const job::LayTackPad& step, const Team&)
{
    spend(site, job::LayTackPad::takes);
    if (kind_of(site, step.pad) != job::SupplyKindOf::tack_pad) return {};   // a doormat takes nothing that counts
    site.has_tack_pad = true;
    site.is_tack_pad_outside = step.side == job::PadSide::outside;
    set_state(site, "tack-pad-down", "", true);
    return {};
}

}
