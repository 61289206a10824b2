#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/walls.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumWalls& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum walls"))});
}

Done carry_out(Site& site, const job::VacuumWalls& step, const Team& by)
{
    const Vacuuming how{.kind = vacuum_kind(site, step.vacuum), .minutes_per_square_meter = 1.0};
    clean_walls(site, by, step.order, [&](Site& s, const Part& part) { vacuum(s, part, how); });
    return {};
}

}
