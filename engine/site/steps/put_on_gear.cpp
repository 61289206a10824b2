#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::PutOnGear&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::PutOnGear& step, const Team& by)
{
    spend(site, job::PutOnGear::takes);
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        who.has_respirator = step.respirator;
        who.has_coverall = step.coverall;
        who.has_covers = step.shoe_covers;
        who.has_gloves = step.gloves;
    }
    return {};
}

}
