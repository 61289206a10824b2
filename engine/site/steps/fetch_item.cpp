#include "site/crossing.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::FetchItem& step, const Team& by)
{
    if (std::find(site.staged.begin(), site.staged.end(), step.item) != site.staged.end()) return to_say("it is inside already");
    return first_of({must_be_inside(site, by), must_be_way(site, step.opening, to_say("{} is not the way out of the work area"))});
}

Done carry_out(Site& site, const job::FetchItem& step, const Team& by)
{
    for (const job::PersonId& id : by) {
        note_exit(site, worker(site, id));
        leave(site, worker(site, id), false);
    }
    spend(site, job::FetchItem::takes);
    for (const job::PersonId& id : by) enter(site, worker(site, id), true);
    site.staged.push_back(step.item);
    return {};
}

}
