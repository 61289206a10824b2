#include "window/run/fault_place.hpp"

#include "window/run/moment.hpp"
#include "window/run/openings.hpp"
#include "window/run/plan_part.hpp"

#include "site/place.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

std::optional<PaperPoint> place_named(const job::Scenario& scenario, const std::string& id)
{
    for (const job::Opening& opening : scenario.openings)
        if (opening.id.name == id) {
            const PlanOpening place = plan_opening(scenario, opening);
            return (place.from + place.to) * 0.5;
        }
    for (const job::Object& object : scenario.objects)
        if (object.id.name == id) return footprint_of(object).center();
    for (const job::Component& component : scenario.components)
        if (component.id.name == id) return paper(site::footprint(scenario, component)).center();
    for (const job::Sill& sill : scenario.sills)
        if (sill.id.name == id) return paper(site::footprint(scenario, sill)).center();
    for (const job::Counter& counter : scenario.counters)
        if (counter.id.name == id) return paper(plan::Rect{counter.west, counter.south, counter.width, counter.depth}).center();
    return std::nullopt;
}

}

std::optional<PaperPoint> place_of(const Story& story, const Happening& happening)
{
    const job::Scenario& scenario = story.inputs.scenario;
    if (happening.card < 0) return std::nullopt;
    const job::LogEntry& entry = story.log.entries[static_cast<std::size_t>(happening.card)];
    for (const job::Parameter& parameter : entry.with)
        if (const auto place = place_named(scenario, parameter.value)) return place;
    const drill::Frame& frame = story.film.at(happening.at);
    for (std::size_t p = 0; p < scenario.crew.size() && p < frame.people.size(); ++p)
        if (std::find(entry.by.begin(), entry.by.end(), scenario.crew[p].id) != entry.by.end()) return paper(frame.people[p].at);
    return std::nullopt;
}

}
