#include "site/checking.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::DryWipe& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::dry_cloth, job::SupplyKindOf::rag}, to_say("for a dry wipe"))});
}

Done carry_out(Site& site, const job::DryWipe& step, const Team& by)
{
    return dry_wipe_items(site, by, kind_of(site, step.cloth) == job::SupplyKindOf::dry_cloth);
}

}
