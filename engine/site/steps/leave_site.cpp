#include "site/crossing.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::LeaveSite&, const Team& by) { return must_be_outside(site, by); }

Done carry_out(Site& site, const job::LeaveSite& step, const Team& by)
{
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        if (who.is_inside) leave(site, who, false);     // before the first dust people come and go freely
        who.is_on_site = false;
        who.is_reachable = step.is_reachable;
    }
    presence_changed(site);
    spend(site, job::LeaveSite::takes);
    return {};
}

}
