#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::TakeDownCovers&, const Team&)
{
    if (std::none_of(site.openings.begin(), site.openings.end(), [](const OpeningState& o) { return o.is_covered; })) return to_say("nothing is covered");
    return std::nullopt;
}

Done carry_out(Site& site, const job::TakeDownCovers&, const Team&)
{
    for (OpeningState& o : site.openings) {
        if (!o.is_covered) continue;
        o.is_covered = o.is_cover_taped = false;
        set_state(site, o.plan.kind == job::OpeningKindOf::door ? "door-covered" : "register-covered", o.plan.id.name, false);
    }
    containment_changed(site);
    spend(site, job::TakeDownCovers::takes);
    return {};
}

}
