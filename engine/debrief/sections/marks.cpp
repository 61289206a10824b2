#include "debrief/sections/parts.hpp"

#include "debrief/fault_mark.hpp"
#include "debrief/legal_order.hpp"
#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr int columns = 6;

std::string no_less(rules::Quarters points) { return points.count == 0 ? "0" : "-" + points_text(points); }

Element group_row(MarkKind kind)
{
    const std::string text = say_with("{} ({} of the weight)", title_of(kind), share_of_weight(kind));
    return Element("tr").add(piece("th", text, "group").with("colspan", columns).with("scope", "colgroup"));
}

/// A row whose first cell heads it over all columns but the last.
Element sum_row(std::string_view what, const std::string& points, std::string_view class_name)
{
    Element row = Element("tr").with("class", class_name);
    row.add(Element("th").with("scope", "row").with("colspan", columns - 1).say(what));
    return row.add(piece("td", points, "right"));
}

Element mark_row(const MarkLine& line, const std::vector<FaultLine>& faults)
{
    Element row("tr");
    Element number("td");
    if (line.fault > 0) number.add(inline_fault_sign(faults[static_cast<std::size_t>(line.fault) - 1]));
    row.add(std::move(number));
    Element what("td");
    what.say(text::as_sentence(line.what.said()));
    if (line.is_critical) what.say(" ").add(piece("strong", say("Critical.")));
    if (!line.rule.empty()) what.add(Element("br")).add(piece("span", line.rule, "id"));
    row.add(std::move(what));
    row.add(piece("td", line.cite.empty() ? std::string(say("none named")) : rules::cited(line.cite), "cite"));
    row.add(piece("td", line.rule_class ? title_of(*line.rule_class) : say("implied")));
    row.add(piece("td", std::to_string(line.weight), "right"));
    return row.add(piece("td", no_less(line.lost), "right"));
}

Element charges(const Report& report)
{
    Element sheet = table(say("Points wanted and points lost"), {say("No."), say("What"), say("Where it is written"), say("Class"), say(">Weight"), say(">Points")});
    sheet.with("class", "marks");
    const rules::Quarters wanted = rules::whole_points(report.sheet.wanted);
    Element body("tbody");
    body.add(sum_row(say("Wanted: the weights of all rules in force"), points_text(wanted), "plain"));
    const MarkLine* before = nullptr;
    for (const MarkLine& line : report.marks) {
        if (!before || before->kind != line.kind) body.add(group_row(line.kind));
        body.add(mark_row(line, report.faults));
        before = &line;
    }
    body.add(sum_row(say("Lost"), no_less(sum(report.marks)), "total"));
    body.add(sum_row(say_with("Left, {} of what was wanted", percent_text(report.sheet.score)), points_text(wanted - report.sheet.lost), "total"));
    return sheet.add(std::move(body));
}

std::string cut_line(const rules::Cut& cut)
{
    return say_with("To pass, no critical rule may be broken, at least {} % of the points must be left and at most {} lost.", cut.least_percent, cut.most_lost);
}

/// What became of the dust is no part of the points: luck and rules go separate ways.
Element outcome_apart(const Report& report)
{
    const Outcome& outcome = report.outcome;
    const auto share = [&](Amount part) {
        if (outcome.released.lead.count <= 0) return std::string(say("none was released"));
        return say_with("{} of the lead that was released ({})", said_share(std::max(0.0, mass(part.lead) / mass(outcome.released.lead))), show_roughly(part.lead));
    };
    Element list = table(say("Outcome of this run, apart from the points and never added to them"), {say("Where"), say("How much")});
    list.with("class", "levels");
    Element body("tbody");
    for (const auto& [where, part] : {std::pair{say("Left in the work area"), outcome.inside}, std::pair{say("Got out of it"), outcome.outside}})
        body.add(Element("tr").add(Element("th").with("scope", "row").say(where)).add(piece("td", share(part))));
    return list.add(std::move(body));
}

/// The legal order that is nearest to the run's own.
Element legal_order(const Report& report)
{
    Element details = Element("details").with("open", "");
    details.add(piece("summary", say("A legal order nearest to this one")));
    Element list = Element("ol").with("class", "legal");
    for (const std::string& line : legal_order_lines(report)) list.add(piece("li", line));
    details.add(std::move(list));
    details.add(piece("p", say("It keeps every rule of order and moves the fewest steps. Doors, people and tools are not looked at: run it to see whether it can be carried out."), "small"));
    return details;
}

Element unweighed(const Report& report, FaultKind kind, std::string_view caption)
{
    Element list = table(caption, {say("No."), say("What"), say("Where it is written"), say("Class")});
    list.with("class", "marks");
    Element body("tbody");
    for (const FaultLine& fault : report.faults) {
        if (fault.kind != kind) continue;
        Element row("tr");
        row.add(Element("td").add(inline_fault_sign(fault)));
        row.add(Element("td").say(as_sentence(std::string(say(fault.rule.says)))).add(Element("br")).add(piece("span", fault.rule.rule, "id")));
        row.add(piece("td", fault.rule.cite.empty() ? std::string(say("none named")) : rules::cited(fault.rule.cite), "cite"));
        row.add(piece("td", title_of(fault.rule.weight_class)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element marks(const Report& report)
{
    Element section = titled(say("Marking sheet"));
    if (!report.sheet.outside.empty())
        section.add(piece("p", say_with("The book is out of force in this run: {} ({}).", say(report.sheet.outside), report.sheet.outside_cite.empty() ? std::string(say("no paragraph named")) : rules::cited(report.sheet.outside_cite))));
    section.add(charges(report));
    if (report.sheet.cut) section.add(piece("p", cut_line(*report.sheet.cut), "small"));
    section.add(outcome_apart(report));
    if (report.sheet.fewest_moves > 0)
        section.add(piece("p", say_with("Fewest steps to move, put in or leave out so that every order holds: {}.", report.sheet.fewest_moves))).add(legal_order(report));
    section.add(piece("p",
                      say("A step that stands in the wrong place costs three quarters of the weight of the heaviest rule it breaks; each broken rule "
                      "of order costs a quarter of its weight; any other broken rule costs all of it."),
                      "small"));
    if (!report.sheet.consequences.empty())
        section.add(unweighed(report, FaultKind::consequence, say("Consequences of the faults above, not weighed again")));
    if (!report.sheet.advice.empty()) section.add(unweighed(report, FaultKind::advice, say("Advice, never weighed")));
    return section;
}

}
