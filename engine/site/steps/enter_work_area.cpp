#include "site/crossing.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::EnterWorkArea& step, const Team& by)
{
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); who.is_inside) return sentence("{} is in the work area already", who.title);
    return must_be_way(site, step.opening, to_say("{} is not the way into the work area"));
}

Done carry_out(Site& site, const job::EnterWorkArea&, const Team& by)
{
    for (const job::PersonId& id : by) enter(site, worker(site, id), false);
    spend(site, job::EnterWorkArea::takes);
    return {};
}

}
