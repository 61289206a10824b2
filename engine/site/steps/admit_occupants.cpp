#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::AdmitOccupants&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::AdmitOccupants&, const Team&)
{
    set_state(site, "occupants-in", "", true);
    spend(site, job::AdmitOccupants::takes);
    return {};
}

}
