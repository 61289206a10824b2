#include "site/checking.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeSill& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, to_say("for a verification wipe")), must_have_card(site)});
}

Done carry_out(Site& site, const job::WipeSill& step, const Team& by)
{
    WipeKind how;
    how.is_proper_cloth = kind_of(site, step.cloth) == job::SupplyKindOf::cloth;
    how.is_named = true;
    how.folds_used_cloth = step.folds_used_cloth;
    return wipe_items(site, by, how, [&](const Item& item) { return item.kind == ItemKind::sill && item.name == step.sill.name; });
}

}
