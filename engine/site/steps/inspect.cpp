#include "site/checking.hpp"
#include "site/cleaning.hpp"
#include "site/hands.hpp"
#include "site/looking.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::Inspect&, const Team& by)
{
    if (site.sheet == SheetState::laid) return to_say("the sheeting still lies on the floor; there is nothing to inspect under it");
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::Inspect& step, const Team& by)
{
    if (site.verification.is_inspected) return {false, to_say("the last inspection found nothing")};
    const double light = (step.light == job::LightUsed::flashlight ? 0.25 : step.light == job::LightUsed::all_lights ? 0.7 : 1.0) / site.scenario.light;
    const std::vector<Spot> seen = visible_dust(site, light);
    const bool is_seen = !seen.empty();
    measure(site, "dust-seen", "", job::MeasureKind::truth, is_seen ? 1.0 : 0.0);
    measure(site, "places-seen", "", job::MeasureKind::number, static_cast<double>(seen.size()));
    if (!step.shoe_covers) {   // bare working shoes tread their dust into what was cleaned
        const Part floor = floor_part(site, job::CleaningPath::toward_door);
        for (const job::PersonId& id : by) walk_along(site, worker(site, id), floor);
    }
    spend(site, job::Inspect::takes);
    if (!is_certified(site, by)) return {};   // does not count; the certified renovator must look himself
    site.verification.saw_dust = is_seen;
    site.verification.is_inspected = !is_seen;
    set_state(site, "inspection-passed", "", !is_seen);
    if (!is_seen && site.verification.items.empty()) site.verification.items = items_to_verify(site, 0);
    settle_verification(site);
    return {};
}

}
