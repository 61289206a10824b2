#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumCarpet& step, const Team& by)
{
    const auto is_here = [&](const job::Carpet& carpet) { return carpet.zone == site.room().plan.id; };
    const bool has_carpet = site.room().plan.floor == job::FloorKind::carpet || std::any_of(site.scenario.carpets.begin(), site.scenario.carpets.end(), is_here);
    if (!has_carpet) return to_say("there is no carpet in the work room");
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum carpet"))});
}

Done carry_out(Site& site, const job::VacuumCarpet& step, const Team& by)
{
    const double minutes = step.minutes_per_square_meter;
    for (const Part& part : carpet_parts(site))
        go_over(site, by, part, job::CleaningPath::toward_door, [&] { return vacuum(site, part, {.kind = vacuum_kind(site, step.vacuum), .minutes_per_square_meter = minutes, .has_beater = step.has_beater_bar}); }, Time{60.0 * minutes}, dust::Stirring::vacuuming);
    return {};
}

}
