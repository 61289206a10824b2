#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::GivePamphlet&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::GivePamphlet&, const Team&)
{
    spend(site, job::GivePamphlet::takes);
    return {};
}

}
