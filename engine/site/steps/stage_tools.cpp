#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::StageTools&, const Team& by) { return must_be_inside(site, by); }

Done carry_out(Site& site, const job::StageTools& step, const Team&)
{
    spend(site, job::StageTools::takes);
    for (const job::SupplyId& id : step.supplies)
        if (std::find(site.staged.begin(), site.staged.end(), id) == site.staged.end()) site.staged.push_back(id);
    return {};
}

}
