#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;

Element kept_rules(const Report& report)
{
    Element section = titled("Rules that were kept");
    // Open from the start, so that it prints whole in every browser.
    Element details = Element("details").with("open", "");
    details.add(piece("summary", fmt::format("{} kept", counted(report.sheet.kept.size(), "rule", "rules"))));
    Element list = table("What was done right", {"Rule", "Where it is written", "Class", ">Weight"});
    list.with("class", "steps");
    Element body("tbody");
    for (const rules::SheetRule& rule : report.sheet.kept) {
        Element row("tr");
        row.add(Element("td").say(as_sentence(rule.says)).say(rule.is_critical ? " (critical)" : ""));
        row.add(piece("td", rule.cite.empty() ? "none named" : rule.cite, "cite"));
        row.add(piece("td", title_of(rule.weight_class)));
        row.add(piece("td", std::to_string(rule.weight), "right"));
        body.add(std::move(row));
    }
    section.add(details.add(list.add(std::move(body))));
    section.add(piece("p", fmt::format("{} of the book did not apply to this scenario or this run.", counted(report.sheet.not_applicable.size(), "rule", "rules")), "small"));
    return section;
}

}
