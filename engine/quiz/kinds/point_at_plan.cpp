#include "quiz/kinds/point_at_plan.hpp"

#include "job/walls.hpp"
#include "quiz/complaints.hpp"
#include "text/quote.hpp"

#include <algorithm>
#include <utility>

namespace flapdoor::quiz {
namespace {

const job::Zone* zone_of(const job::Scenario& scenario, const job::ZoneId& id) { return job::find_by_id(scenario.zones, id); }

std::optional<plan::Rect> strip_of(const job::Scenario& scenario, const job::Opening& opening, Length into)
{
    const job::Zone* zone = zone_of(scenario, opening.zone);
    if (zone == nullptr) return std::nullopt;
    return job::wall_strip(*zone, opening.wall, opening.from, opening.width, into);
}

std::optional<plan::Rect> place_of_component(const job::Scenario& scenario, const job::Component& part)
{
    if (const job::Opening* opening = job::find_by_id(scenario.openings, part.opening)) return strip_of(scenario, *opening, {});
    const job::Zone* zone = zone_of(scenario, part.zone);
    if (zone == nullptr) return std::nullopt;
    if (part.kind == job::ComponentKindOf::ceiling) return job::floor_of(*zone);
    return job::wall_strip(*zone, part.wall, part.from, part.width, {});
}

template <class List>
void add_ids(const List& list, std::vector<std::string>& ids)
{
    for (const auto& thing : list) ids.push_back(thing.id.name);
}

std::vector<std::string> things_of(const job::Scenario& scenario)
{
    std::vector<std::string> ids;
    add_ids(scenario.zones, ids);
    add_ids(scenario.openings, ids);
    add_ids(scenario.objects, ids);
    add_ids(scenario.sills, ids);
    add_ids(scenario.counters, ids);
    add_ids(scenario.components, ids);
    return ids;
}

}

std::optional<plan::Rect> place_of_thing(const job::Scenario& scenario, const std::string& id)
{
    if (const auto* zone = job::find_by_id(scenario.zones, job::ZoneId{id})) return job::floor_of(*zone);
    if (const auto* opening = job::find_by_id(scenario.openings, job::OpeningId{id})) return strip_of(scenario, *opening, {});
    if (const auto* object = job::find_by_id(scenario.objects, job::ObjectId{id})) return plan::Rect{object->west, object->south, object->width, object->depth};
    if (const auto* counter = job::find_by_id(scenario.counters, job::CounterId{id})) return plan::Rect{counter->west, counter->south, counter->width, counter->depth};
    if (const auto* sill = job::find_by_id(scenario.sills, job::SillId{id})) {
        const auto* window = job::find_by_id(scenario.openings, sill->window);
        return window == nullptr ? std::nullopt : strip_of(scenario, *window, sill->depth);
    }
    if (const auto* part = job::find_by_id(scenario.components, job::ComponentId{id})) return place_of_component(scenario, *part);
    return std::nullopt;
}

void locate(PointAtPlan& asked, const FindScenario& find, Complaints& complaints)
{
    const auto site = find(asked.scenario.text);
    if (!site) return complaints.add(asked.scenario.where, "a scenario without problems", describe(site.error().front()));
    if (*site == nullptr) return complaints.add(asked.scenario.where, "the id of a scenario", text::quoted(asked.scenario.text));
    asked.site = *site;
    for (Region& region : asked.regions) {
        if (region.at) {
            const Across size = region.size.value_or(Across{});
            region.place = {region.at->x, region.at->y, size.x, size.y};
            continue;
        }
        if (!region.thing) continue;    // told by check
        if (const auto place = place_of_thing(*asked.site, region.thing->text)) region.place = *place;
        else complaints.unknown(*region.thing, "thing of the scenario", things_of(*asked.site));
    }
}

const Region* region_at(const PointAtPlan& asked, plan::Point at)
{
    const Region* smallest = nullptr;
    for (const Region& region : asked.regions) {
        if (plan::distance(region.place, at) > region.tolerance + 1e-9 * 1.0_m) continue;
        const auto size = [](const Region& r) { return std::pair(plan::grown(r.place, r.tolerance).area(), r.id.text); };
        if (smallest == nullptr || size(region) < size(*smallest)) smallest = &region;
    }
    return smallest;
}

Mark mark(const PointAtPlan& asked, const Response& response)
{
    Mark mark;
    const auto* pointed = std::get_if<Pointed>(&response);
    if (pointed == nullptr) return mark;
    const auto named = std::find_if(asked.regions.begin(), asked.regions.end(), [&](const Region& region) { return region.id.text == pointed->region; });
    const Region* region = pointed->region.empty() ? region_at(asked, {pointed->x, pointed->y}) : named == asked.regions.end() ? nullptr : &*named;
    if (region == nullptr) return mark;
    mark.is_right = region->is_right;
    if (region->is_right) mark.share = {1, 1};
    else {
        mark.misconceptions.push_back(region->misconception);
        mark.told.push_back(region->told);
    }
    return mark;
}

void check(const PointAtPlan& asked, const Place& where, Complaints& complaints)
{
    std::vector<rules::Marked> ids;
    bool has_right = false;
    for (const Region& region : asked.regions) {
        ids.push_back(region.id);
        has_right = has_right || region.is_right;
        if (region.thing.has_value() == region.at.has_value()) complaints.add(region.id.where, "either a `thing` or a place `at`", region.at ? "both" : "neither");
        if (region.size && !region.at) complaints.add(region.id.where, "`at` for a region with a `size`", "none");
        if (region.is_right) continue;
        if (region.misconception.empty()) complaints.add(region.id.where, "a `misconception` on a wrong region", "none");
        if (region.told.is_empty()) complaints.add(region.id.where, "a `told` on a wrong region: what to say to whoever pointed there", "none");
    }
    complaints.must_differ("a region id", ids);
    if (!has_right) complaints.add(where, "at least one right region", "none");
}

}
