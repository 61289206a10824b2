#include "debrief/sections/parts.hpp"

#include "debrief/fault_mark.hpp"
#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;

namespace {

/// The critical rules that were broken, a line each: in one sentence nobody finds the third of seven.
Element broken_rules(const Report& report)
{
    Element list = Element("ul").with("class", "broken");
    for (const FaultLine& fault : report.faults) {
        if (!fault.rule.is_critical) continue;
        Element line("li");
        line.add(inline_fault_sign(fault));
        line.add(Element("span").say(as_sentence(std::string(say(fault.rule.says)))).say(" ").add(piece("span", rules::cited(fault.rule.cite), "cite")));
        list.add(std::move(line));
    }
    return list;
}

}

Element result(const Report& report)
{
    Element box = Element("section").with("class", report.sheet.is_passed ? "result" : "result failed").with("aria-label", say("Result"));
    const bool is_failed_by_rules = report.sheet.outside.empty() && !report.sheet.critical.empty();
    if (is_failed_by_rules) {
        box.add(piece("p", text::say_number("NOT PASSED: {} critical rule was broken.", "NOT PASSED: {} critical rules were broken.", report.sheet.critical.size()), "verdict"));
        box.add(broken_rules(report));
    }
    else box.add(piece("p", result_line(report), "verdict"));
    box.add(piece("p", score_line(report), "score"));
    return box.add(piece("p", say(score_note), "small"));
}

}
