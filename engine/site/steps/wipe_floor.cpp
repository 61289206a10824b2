#include "site/checking.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeFloor& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, "for a verification wipe")});
}

Done carry_out(Site& site, const job::WipeFloor& step, const Team& by)
{
    if (step.sections > 0) divide_floor(site, step.sections);
    WipeKind how;
    how.is_proper_cloth = kind_of(site, step.cloth) == job::SupplyKindOf::cloth && step.has_handle;
    return wipe_items(site, by, how, [&](const Item& item) {
        return item.kind == ItemKind::floor && (step.section == 0 || item.name == "floor " + std::to_string(step.section));
    });
}

}
