#include "site/crossing.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::LeaveWorkArea& step, const Team& by)
{
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); !who.is_inside) return sentence("{} is outside already", who.title);
    return must_be_way(site, step.opening, to_say("{} is not the way out of the work area"));
}

Done carry_out(Site& site, const job::LeaveWorkArea&, const Team& by)
{
    for (const job::PersonId& id : by) {
        note_exit(site, worker(site, id));
        leave(site, worker(site, id), false);
    }
    spend(site, job::LeaveWorkArea::takes);
    return {};
}

}
