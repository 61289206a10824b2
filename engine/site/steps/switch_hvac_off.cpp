#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::SwitchHvacOff&, const Team&)
{
    if (!site.is_hvac_running) return to_say("the air handling is off already");
    return std::nullopt;
}

Done carry_out(Site& site, const job::SwitchHvacOff&, const Team&)
{
    spend(site, job::SwitchHvacOff::takes);
    site.is_hvac_running = false;
    set_state(site, "hvac-running", "", false);
    containment_changed(site);
    return {};
}

}
