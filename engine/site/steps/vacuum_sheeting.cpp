#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::VacuumSheeting& step, const Team& by)
{
    if (site.sheet != SheetState::laid) return to_say("no sheeting lies on the floor");
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum the sheeting"))});
}

Done carry_out(Site& site, const job::VacuumSheeting& step, const Team& by)
{
    constexpr Time per_square_meter = job::VacuumSheeting::takes;
    for (const std::size_t s : site.sheeting) {
        const Part part = bare_part(site, s);
        if (part.patches.empty()) continue;
        go_over(site, by, part, job::CleaningPath::toward_door, [&] { return vacuum(site, part, {.kind = vacuum_kind(site, step.vacuum), .minutes_per_square_meter = per_square_meter / 1.0_min}); }, per_square_meter, dust::Stirring::vacuuming);
    }
    return {};
}

}
