#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_number;
using text::say_with;

namespace {

std::string standing(const rules::SheetRule& rule)
{
    return say_with("{}, weight {}{}", title_of(rule.weight_class), rule.weight, rule.is_critical ? say(", critical") : "");
}

/// A tick that opens: what the rule asks, why, and where it is written.
Element kept(const rules::SheetRule& rule)
{
    Element details = Element("details").with("class", "kept");
    details.add(Element("summary").add(Element("span").with("class", "tick").with("aria-label", say("kept")).say("\u2713")).say(" " + as_sentence(std::string(say(rule.says)))).say(" ").add(piece("span", rules::cited(rule.cite), "cite")));
    Element points("dl");
    points.add(Element("dt").say(say("Why"))).add(Element("dd").say(say(rule.reason)));
    if (!rule.harm.empty()) points.add(Element("dt").say(say("Spared you"))).add(Element("dd").say(say(rule.harm)));
    points.add(Element("dt").say(say("Written in"))).add(Element("dd").say(fmt::format("{} ({})", rule.cite.empty() ? std::string(say("no paragraph named")) : rules::cited(rule.cite), standing(rule))));
    points.add(Element("dt").say(say("Rule"))).add(Element("dd").add(piece("span", rule.rule, "id")));
    return details.add(std::move(points));
}

}

Element kept_rules(const Report& report)
{
    Element section = titled(say("Rules that were kept"));
    section.add(piece("p", say_number("{} rule kept; on the screen it opens to its reason.", "{} rules kept; on the screen each opens to its reason.", report.sheet.kept.size()), "intro"));
    Element list = Element("div").with("class", "kept-rules");
    for (const rules::SheetRule& rule : report.sheet.kept) list.add(kept(rule));
    section.add(std::move(list));
    section.add(piece("p", say_number("{} rule of the book did not apply to this scenario or this run.", "{} rules of the book did not apply to this scenario or this run.", report.sheet.not_applicable.size()), "small"));
    return section;
}

}
