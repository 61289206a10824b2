#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::CheckContainment&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::CheckContainment&, const Team& by)
{
    spend(site, job::CheckContainment::takes);
    const OpeningState& door = entrance(site);
    measure(site, "way-out-free", "", job::MeasureKind::truth, !door.is_covered && (door.is_open || door.flap) ? 1.0 : 0.0);
    measure(site, "containment-whole", "", job::MeasureKind::truth, is_containment_whole(site) ? 1.0 : 0.0);
    site.is_checked = is_certified(site, by);
    return {};
}

}
