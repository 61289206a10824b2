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

constexpr int columns = 4;

std::string no_less(rules::Quarters points) { return points.count == 0 ? "0" : "-" + points_text(points); }

Element group_row(MarkKind kind)
{
    const std::string text = say_with("{} ({} of the weight)", title_of(kind), share_of_weight(kind));
    return Element("tr").add(piece("th", text, "group").with("colspan", columns).with("scope", "colgroup"));
}

/// What the rule asks, and behind it where that is written. A card that moves for the sake of a rule leaves that to the rule's own row.
Element what_of(const MarkLine& line)
{
    Element what = Element("td").say(text::as_sentence(line.what.said()));
    if (line.is_critical) what.say(" ").add(piece("strong", say("Critical.")));
    if (line.kind == MarkKind::move) return what;
    const std::string cite = line.cite.empty() ? std::string(say("none named")) : rules::cited(line.cite);
    return what.say(" ").add(piece("span", fmt::format("{} ({})", cite, line.rule_class ? title_of(*line.rule_class) : say("implied")), "cite"));
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
    row.add(what_of(line));
    row.add(piece("td", std::to_string(line.weight), "right"));
    return row.add(piece("td", no_less(line.lost), "right"));
}

Element charges(const Report& report)
{
    Element sheet = table(say("Points wanted and points lost"), {say("No."), say("What, and where it is written"), say(">Weight"), say(">Points")});
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

/// What is not weighed stands further below, fault by fault.
std::string not_weighed(const Report& report)
{
    const std::size_t following = report.sheet.consequences.size(), advice = report.sheet.advice.size();
    std::string text;
    if (following > 0)
        text += text::say_number("{} more broken rule follows from these faults and is not weighed again; it is told below as a consequence.",
                                 "{} more broken rules follow from these faults and are not weighed again; they are told below as consequences.", following);
    if (advice > 0) text += (text.empty() ? "" : " ") + text::say_number("{} point of advice, never weighed, is told there too.", "{} points of advice, never weighed, are told there too.", advice);
    return text;
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
    if (const std::string rest = not_weighed(report); !rest.empty()) section.add(piece("p", rest));
    return section;
}

}
