#include "site/checking.hpp"
#include "site/cleaning.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeFloor& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, to_say("for a verification wipe")), must_have_card(site)});
}

Done carry_out(Site& site, const job::WipeFloor& step, const Team& by)
{
    if (step.sections > 0) divide_floor(site, step.sections);
    WipeKind how;
    how.is_proper_cloth = kind_of(site, step.cloth) == job::SupplyKindOf::cloth && step.has_handle;
    how.is_named = step.section != 0;
    const Part floor = floor_part(site, job::CleaningPath::toward_door);
    measure(site, "bare-floor", "", job::MeasureKind::area, (site.surfaces[floor.surface].patch_area * static_cast<double>(floor.patches.size())).si);
    return wipe_items(site, by, how, [&](const Item& item) {
        return item.kind == ItemKind::floor && (step.section == 0 || item.name == "floor " + std::to_string(step.section));
    });
}

}
