#include "site/checking.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeCounter& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, "for a verification wipe")});
}

Done carry_out(Site& site, const job::WipeCounter& step, const Team& by)
{
    WipeKind how;
    how.is_proper_cloth = kind_of(site, step.cloth) == job::SupplyKindOf::cloth;
    return wipe_items(site, by, how, [&](const Item& item) {
        const std::string section = step.counter.name + " " + std::to_string(step.section);
        return item.kind == ItemKind::counter && (step.section > 0 ? item.name == section : item.name.rfind(step.counter.name, 0) == 0);
    });
}

}
