#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::HandOverReport&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::HandOverReport&, const Team&)
{
    spend(site, job::HandOverReport::takes);
    return {};
}

}
