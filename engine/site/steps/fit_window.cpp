#include "site/hands.hpp"
#include "site/place.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::FitWindow& step, const Team& by)
{
    return first_of({must_be(opening(site, step.opening), {job::OpeningKindOf::window}, to_say("a window")), must_be_inside(site, by)});
}

Done carry_out(Site& site, const job::FitWindow& step, const Team& by)
{
    const OpeningState& o = opening(site, step.opening);
    work_at(site, by, middle(site.zones[o.zone].plan, o.plan), job::FitWindow::takes);
    return {};
}

}
