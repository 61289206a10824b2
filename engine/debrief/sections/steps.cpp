#include "debrief/sections/parts.hpp"

#include "debrief/timeline.hpp"
#include "debrief/wording.hpp"
#include "text/show.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace flapdoor::debrief::sections {

using text::Element;

namespace {

std::string remark(const StepLine& step)
{
    if (step.outcome == job::Outcome::refused) return "refused: " + step.reason;
    if (step.outcome == job::Outcome::not_needed) return "not needed: " + step.reason;
    return step.faults.empty() ? "" : fmt::format("fault {}", fmt::join(step.faults, ", "));
}

/// "Rosa, certified renovator" is told once by the scenario; in a long table the name is enough.
std::string short_names(const std::vector<std::string>& people)
{
    std::string names;
    for (const std::string& person : people) names += fmt::format("{}{}", names.empty() ? "" : ", ", person.substr(0, person.find(',')));
    return names;
}

Element step_table(const Report& report)
{
    Element list = table("Every step as it was carried out", {">No.", "Begins", "Step", "By", "Remark"});
    list.with("class", "steps");
    Element body("tbody");
    for (const StepLine& step : report.steps) {
        Element row("tr");
        row.add(piece("td", std::to_string(step.number), "right"));
        row.add(piece("td", text::show_clock(step.start)));
        row.add(piece("th", step.title).with("scope", "row"));
        row.add(piece("td", short_names(step.by)));
        row.add(piece("td", remark(step)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element steps(const Report& report)
{
    Element section = titled("The steps over the day");
    if (report.steps.empty()) return section.add(piece("p", "The plan has no steps."));
    Element figure("figure");
    figure.add(Element("figcaption").say("A bar a step, a row a phase; dark bars have a fault; signs stand at the first step a fault speaks of"));
    figure.add(timeline(report));
    section.add(std::move(figure));
    Element details("details");
    details.with("open", "").add(piece("summary", fmt::format("{} in the order of the plan", counted(report.steps.size(), "step", "steps"))));
    section.add(details.add(step_table(report)));
    return section;
}

}
