#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site&, const job::Wait&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::Wait& step, const Team&)
{
    const bool is_due = std::any_of(site.verification.items.begin(), site.verification.items.end(), [](const Item& item) { return item.state == ItemState::waiting; });
    if (step.only_if_due && !is_due) return {false, to_say("no surface has failed twice")};
    spend(site, step.time);
    return {};
}

}
