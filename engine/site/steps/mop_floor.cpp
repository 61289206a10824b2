#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::MopFloor& step, const Team& by)
{
    return first_of({must_be_inside(site, by),
                     must_have(site, step.mop, {job::SupplyKindOf::mop_two_bucket, job::SupplyKindOf::mop_one_bucket, job::SupplyKindOf::mopping_system}, to_say("to mop"))});
}

Done carry_out(Site& site, const job::MopFloor& step, const Team& by)
{
    const Part part = floor_part(site, step.path, step.route);
    if (part.patches.empty()) return {false, step.route.empty() ? to_say("all the floor lies under sheeting") : to_say("the way drawn touches no bare floor")};
    const Rinsing rinsing = kind_of(site, step.mop) == job::SupplyKindOf::mop_one_bucket ? Rinsing::same_water : Rinsing::separate_water;
    go_over(site, by, part, way_of(site, step.path, step.route), [&] { return mop(site, part, rinsing, step.water_changes); }, job::MopFloor::takes);
    return {};
}

}
