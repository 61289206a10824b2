#include "site/checking.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::ReClean& step, const Team& by)
{
    if (step.vacuum.is_empty() && step.cloth.is_empty()) return to_say("nothing is chosen to clean with");
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::ReClean& step, const Team& by)
{
    return clean_again(site, by, step.vacuum.is_empty() ? nullptr : find_supply(site, step.vacuum), !step.cloth.is_empty());
}

}
