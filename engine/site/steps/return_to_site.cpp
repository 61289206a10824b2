#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::ReturnToSite&, const Team& by)
{
    for (const job::PersonId& id : by)
        if (const Worker& who = worker(site, id); who.is_on_site) return sentence("{} is on the site already", who.title);
    return std::nullopt;
}

Done carry_out(Site& site, const job::ReturnToSite&, const Team& by)
{
    spend(site, job::ReturnToSite::takes);
    for (const job::PersonId& id : by) {
        worker(site, id).is_on_site = true;
        worker(site, id).is_reachable = true;
    }
    presence_changed(site);
    return {};
}

}
