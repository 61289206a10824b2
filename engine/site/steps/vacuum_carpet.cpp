#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumCarpet& step, const Team& by)
{
    if (site.room().plan.floor != job::FloorKind::carpet) return "there is no carpet in the work room";
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, "to vacuum carpet")});
}

Done carry_out(Site& site, const job::VacuumCarpet& step, const Team& by)
{
    const Part part = floor_part(site, job::CleaningPath::toward_door);
    const double minutes = step.minutes_per_square_meter;
    go_over(site, by, part, job::CleaningPath::toward_door, [&] { return vacuum(site, part, minutes, is_hepa(site, step.vacuum), step.has_beater_bar); }, Time{60.0 * minutes});
    return {};
}

}
