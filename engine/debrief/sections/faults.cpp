#include "debrief/sections/parts.hpp"

#include "debrief/fault_mark.hpp"
#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::to_say;
using text::say_with;
using text::say_number;

namespace {

constexpr std::size_t most_told = 3;    // a rule asked of each card can be broken thirty times over: the rest by number

void add_point(Element& list, std::string_view name, std::string_view text)
{
    if (text.empty()) return;
    list.add(Element("dt").say(name)).add(Element("dd").say(text));
}

const StepLine& step_at(const Report& report, int entry) { return report.steps.at(static_cast<std::size_t>(entry)); }

std::string steps_told(const Report& report, const FaultLine& fault)
{
    std::string text;
    for (std::size_t i = 0; i < fault.steps.size(); ++i) {
        const StepLine& step = step_at(report, fault.steps[i]);
        if (i < most_told) text += fmt::format("{}{} {} ({})", i == 0 ? "" : ", ", step.number, say(step.title), text::show_clock(step.start));
        else text += fmt::format("{}{}", i == most_told ? say("; also ") : ", ", step.number);
    }
    return text;
}

Element sentences(const FaultLine& fault)
{
    Element told("dd");
    const std::vector<rules::Fault>& all = fault.rule.faults;
    for (std::size_t i = 0; i < std::min(all.size(), most_told); ++i) told.add(Element("p").say(text::as_sentence(all[i].what.said())));
    if (all.size() > most_told) told.add(piece("p", say_with("And {} more, at the steps below.", say_number("{} time", "{} times", all.size() - most_told)), "small"));
    return told;
}

/// By number: what those faults are stands right above.
std::string roots_told(const Report& report, const rules::SheetRule& rule)
{
    std::string numbers;
    std::size_t count = 0;
    for (const std::string& id : rule.roots)
        if (const FaultLine* root = find_fault(report.faults, id)) numbers += fmt::format("{}{}", count++ == 0 ? "" : ", ", root->number);
    return count == 0 ? std::string() : say_with(count == 1 ? to_say("fault {}") : to_say("faults {}"), numbers);
}

/// Why the rule is there, and what goes wrong in the room without it.
Element reasons(const rules::SheetRule& rule)
{
    Element told = Element("dd").say(say(rule.reason));
    if (!rule.harm.empty()) told.say(" ").add(piece("span", say("What goes wrong:"), "lead-in")).say(" ").say(say(rule.harm));
    return told;
}

std::string in_points(rules::Quarters points) { return say_with(points == rules::whole_points(1) ? to_say("{} point") : to_say("{} points"), points_text(points)); }

/// What the fault cost in this run, and whether it alone fails it.
Element cost(const Report& report, const FaultLine& fault)
{
    Element told("dd");
    const rules::Quarters lost = cost_of(report.marks, fault.rule.rule);
    if (fault.kind == FaultKind::advice) told.say(say("No points: advice."));
    else if (fault.kind == FaultKind::consequence) told.say(say("No points of its own."));
    else if (fault.kind == FaultKind::line) told.say(say_with("{}, its whole weight.", in_points(lost)));
    else told.say(say_with("{}: {} for the broken rule, {} for steps to move or put in for its sake.", in_points(lost), points_text(fault.rule.lost),
                              points_text(lost - fault.rule.lost)));
    if (fault.rule.is_critical) told.say(" ").add(piece("strong", say("Critical: it fails the run whatever the points.")));
    return told;
}

/// The paragraph and its class; on the screen also the name that rule books use.
Element written(const rules::SheetRule& rule)
{
    Element told = Element("dd").say(fmt::format("{} ({})", rule.cite.empty() ? std::string(say("no paragraph named")) : rules::cited(rule.cite), title_of(rule.weight_class)));
    return told.say(" ").add(piece("span", rule.rule, "id screen-only"));
}

Element fault_card(const Report& report, const FaultLine& fault, std::string_view tag)
{
    const rules::SheetRule& rule = fault.rule;
    const bool has_points = fault.kind != FaultKind::consequence || rule.is_critical;
    Element card = Element("div").with("class", "fault-card");
    card.add(Element(tag).add(inline_fault_sign(fault)).add(Element("span").say(say_with("{}. The rule asks: {}", name_of(fault), say(rule.says)))));
    Element points("dl");
    if (!rule.faults.empty()) points.add(Element("dt").say(say("What happened"))).add(sentences(fault));
    add_point(points, fault.steps.size() == 1 ? say("Step") : say("Steps"), steps_told(report, fault));
    points.add(Element("dt").say(say("Why"))).add(reasons(rule));
    add_point(points, say("Follows from"), roots_told(report, rule));
    if (has_points) points.add(Element("dt").say(say("Cost here"))).add(cost(report, fault));
    points.add(Element("dt").say(say("Written in"))).add(written(rule));
    return card.add(std::move(points));
}

bool is_charged(const FaultLine& fault) { return fault.is_weighed(); }
bool follows(const FaultLine& fault) { return fault.kind == FaultKind::consequence; }
bool is_advice(const FaultLine& fault) { return fault.kind == FaultKind::advice; }

/// Cards of the faults that are meant, two beside each other on paper.
Element cards_of(const Report& report, std::string_view tag, bool (*is_meant)(const FaultLine&))
{
    Element cards = Element("div").with("class", "fault-cards");
    for (const FaultLine& fault : report.faults)
        if (is_meant(fault)) cards.add(fault_card(report, fault, tag));
    return cards;
}

}

Element faults(const Report& report)
{
    Element section = titled(say("Faults, one by one"));
    if (report.faults.empty()) {
        section.add(piece("p", say("No rule of the book was broken. Another run with another seed can still go differently for the dust.")));
        return section;
    }
    section.add(piece("p",
                      say("A diamond is a critical fault, a ring a weighed one, a square one that is not weighed. The numbers are those of the marking sheet and the timeline."),
                      "small intro"));
    section.add(cards_of(report, "h3", is_charged));
    if (std::any_of(report.faults.begin(), report.faults.end(), follows)) {
        section.add(Element("h3").say(say("Consequences of the faults above, not weighed again")));
        section.add(piece("p", say("They have no points of their own: the fault that each follows from is charged."), "small intro"));
        section.add(cards_of(report, "h4", follows));
    }
    if (std::any_of(report.faults.begin(), report.faults.end(), is_advice)) {
        section.add(Element("h3").say(say("Advice, never weighed")));
        section.add(cards_of(report, "h4", is_advice));
    }
    return section;
}

}
