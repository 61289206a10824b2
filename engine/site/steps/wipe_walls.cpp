#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/walls.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::WipeWalls& step, const Team& by)
{
    return first_of({must_be_inside(site, by), must_have(site, step.cloth, {job::SupplyKindOf::cloth, job::SupplyKindOf::rag}, to_say("to wipe walls"))});
}

Done carry_out(Site& site, const job::WipeWalls& step, const Team& by)
{
    clean_walls(site, by, step.order, [](Site& s, const Part& part) { wipe(s, part, true); });
    return {};
}

}
