#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::SwitchHvacOn&, const Team&)
{
    if (site.is_hvac_running) return to_say("the air handling is running already");
    return std::nullopt;
}

Done carry_out(Site& site, const job::SwitchHvacOn&, const Team&)
{
    spend(site, job::SwitchHvacOn::takes);
    site.is_hvac_running = true;
    set_state(site, "hvac-running", "", true);
    containment_changed(site);
    return {};
}

}
