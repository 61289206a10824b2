#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;

namespace {

std::string standing(const rules::SheetRule& rule)
{
    return fmt::format("{}, weight {}{}", title_of(rule.weight_class), rule.weight, rule.is_critical ? ", critical" : "");
}

/// A tick that opens: what the rule asks, why, and where it is written.
Element kept(const rules::SheetRule& rule)
{
    Element details = Element("details").with("class", "kept");
    details.add(Element("summary").add(Element("span").with("class", "tick").with("aria-label", "kept").say("\u2713")).say(" " + as_sentence(rule.says)));
    Element points("dl");
    points.add(Element("dt").say("Why")).add(Element("dd").say(rule.reason));
    if (!rule.harm.empty()) points.add(Element("dt").say("Spared you")).add(Element("dd").say(rule.harm));
    points.add(Element("dt").say("Written in")).add(Element("dd").say(fmt::format("{} ({})", rule.cite.empty() ? "no paragraph named" : rule.cite, standing(rule))));
    points.add(Element("dt").say("Rule")).add(Element("dd").add(piece("span", rule.rule, "id")));
    return details.add(std::move(points));
}

}

Element kept_rules(const Report& report)
{
    Element section = titled("Rules that were kept");
    section.add(piece("p", fmt::format("{} kept. Each opens.", counted(report.sheet.kept.size(), "rule", "rules"))));
    for (const rules::SheetRule& rule : report.sheet.kept) section.add(kept(rule));
    section.add(piece("p", fmt::format("{} of the book did not apply to this scenario or this run.", counted(report.sheet.not_applicable.size(), "rule", "rules")), "small"));
    return section;
}

}
