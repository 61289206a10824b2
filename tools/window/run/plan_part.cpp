#include "window/run/plan_part.hpp"

#include "window/run/moment.hpp"

#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

PaperBox hull(const PaperBox& a, const PaperBox& b)
{
    return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)}, {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

}

PaperBox grown(const PaperBox& box, double by) { return {{box.low.x - by, box.low.y - by}, {box.high.x + by, box.high.y + by}}; }

PaperBox footprint_of(const job::Object& object) { return paper(plan::Rect{object.west, object.south, object.width, object.depth}); }

PaperBox near_part(const job::Scenario& scenario, double room_around)
{
    PaperBox near{};
    job::ZoneId work_room;
    for (const job::Zone& zone : scenario.zones)
        if (zone.role == job::ZoneRole::work_room) {
            near = paper(site::footprint(zone));
            work_room = zone.id;
        }
    PaperBox all = near;
    for (const job::Opening& opening : scenario.openings) {
        if (opening.kind != job::OpeningKindOf::door || (opening.zone != work_room && opening.leads_to != work_room)) continue;
        const job::Zone* beyond = find_by_id(scenario.zones, opening.zone == work_room ? opening.leads_to : opening.zone);
        if (beyond != nullptr) all = hull(all, paper(site::footprint(*beyond)));
    }
    return grown(all, room_around);
}

PaperBox whole_plan(const job::Scenario& scenario)
{
    PaperBox whole = paper(site::footprint(scenario.zones.front()));
    for (const job::Zone& zone : scenario.zones) whole = hull(whole, paper(site::footprint(zone)));
    return grown(whole, room_for_measures);
}

PaperView comfortable_view(const PaperBox& near, const PaperBox& whole, const Box& window, float margin)
{
    PaperView view = PaperView::fit(near, window, margin);
    const PaperPoint low = view.paper({window.low.x + margin, window.high.y - margin});
    const PaperPoint high = view.paper({window.high.x - margin, window.low.y + margin});
    /// How far the window has to go along one axis: the middle of all if all fits, else as far as `near` allows.
    const auto shift = [](double seen_low, double seen_high, double near_low, double near_high, double whole_low, double whole_high) {
        const double wanted = (whole_low + whole_high) * 0.5 - (seen_low + seen_high) * 0.5;
        return std::clamp(wanted, near_high - seen_high, near_low - seen_low);
    };
    const double dx = low.x < near.low.x ? shift(low.x, high.x, near.low.x, near.high.x, whole.low.x, whole.high.x) : 0.0;
    const double dy = low.y < near.low.y ? shift(low.y, high.y, near.low.y, near.high.y, whole.low.y, whole.high.y) : 0.0;
    view.pan({-view.length(dx), view.length(dy)});
    return view;
}

}
