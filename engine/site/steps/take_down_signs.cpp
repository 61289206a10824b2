#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::TakeDownSigns& step, const Team&)
{
    if (!opening(site, step.at).has_sign) return to_say("no signs hang there");
    return std::nullopt;
}

Done carry_out(Site& site, const job::TakeDownSigns& step, const Team&)
{
    // The crew leaves with its tools.
    site.ledger.move_account(site.tools.account, dust::Side::outside, dust::Pathway::tools);
    opening(site, step.at).has_sign = false;
    set_state(site, "signs-up", step.at.name, false);
    spend(site, job::TakeDownSigns::takes);
    return {};
}

}
