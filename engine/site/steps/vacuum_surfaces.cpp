#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumSurfaces& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum surfaces"))});
}

Done carry_out(Site& site, const job::VacuumSurfaces& step, const Team& by)
{
    Vacuuming how;
    how.kind = vacuum_kind(site, step.vacuum);
    how.minutes_per_square_meter = step.minutes_per_square_meter;
    how.crosses = step.crosses;
    how.does_edges = step.does_edges;
    for (const Part& part : parts_of(site, step.target, step.path, step.route))
        go_over(site, by, part, way_of(site, step.path, step.route), [&] { return vacuum(site, part, how); }, Time{60.0 * step.minutes_per_square_meter},
                dust::Stirring::vacuuming);
    return {};
}

}
