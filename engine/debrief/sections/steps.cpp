#include "debrief/sections/parts.hpp"

#include "debrief/timeline.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;
using text::say_number;
using text::to_say;

namespace {

std::string remark(const StepLine& step)
{
    if (step.outcome == job::Outcome::refused) return say_with("refused: {}", step.reason.said());
    if (step.outcome == job::Outcome::not_needed) return say_with("not needed: {}", step.reason.said());
    const std::string faults = step.faults.empty() ? "" : say_with(step.faults.size() == 1 ? to_say("fault {}") : to_say("faults {}"), fmt::format("{}", fmt::join(step.faults, ", ")));
    if (step.reason.empty()) return faults;
    return step.reason.said() + (faults.empty() ? "" : "; ") + faults;
}

/// "Rosa, certified renovator" is told once by the scenario; in a long table the name is enough.
std::string short_names(const std::vector<std::string>& people)
{
    std::string names;
    for (const std::string& person : people) names += fmt::format("{}{}", names.empty() ? "" : ", ", called(person).substr(0, called(person).find(',')));
    return names;
}

Element step_table(const Report& report)
{
    Element list = table(say("Every step as it was carried out"), {say(">No."), say("Begins"), say("Step"), say("By"), say("Remark")});
    list.with("class", "steps");
    Element body("tbody");
    for (const StepLine& step : report.steps) {
        Element row("tr");
        row.add(piece("td", std::to_string(step.number), "right"));
        row.add(piece("td", text::show_clock(step.start)));
        row.add(piece("th", say(step.title)).with("scope", "row"));
        row.add(piece("td", short_names(step.by)));
        row.add(piece("td", remark(step)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element steps(const Report& report)
{
    Element section = titled(say("The steps over the day"));
    if (report.steps.empty()) return section.add(piece("p", say("The plan has no steps.")));
    Element figure("figure");
    figure.add(Element("figcaption").say(say("A bar a step, a row a phase; dark bars have a fault; signs stand at the first step a fault speaks of")));
    figure.add(timeline(report));
    section.add(std::move(figure));
    Element details("details");
    details.with("open", "").add(piece("summary", say_with("{} in the order of the plan", say_number("{} step", "{} steps", report.steps.size()))));
    section.add(details.add(step_table(report)));
    return section;
}

}
