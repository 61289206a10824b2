#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeSurfaces& step, const Team& by)
{
    if (step.target == job::Target::floor) return to_say("a floor is mopped, not wiped with a hand cloth");
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::rag}, to_say("to wipe surfaces"))});
}

Done carry_out(Site& site, const job::WipeSurfaces& step, const Team& by)
{
    for (const Part& part : parts_of(site, step.target, job::CleaningPath::toward_door)) {
        const Surface& surface = site.surfaces[part.surface];
        if (surface.role == SurfaceRole::floor || surface.is_soft) continue;
        const bool changes = step.changes_cloth && kind_of(site, step.cloth) == job::SupplyKindOf::cloth;
        go_over(site, by, part, job::CleaningPath::toward_door, [&] { return wipe(site, part, changes); }, job::WipeSurfaces::takes);
    }
    return {};
}

}
