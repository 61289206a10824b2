#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;

Element result(const Report& report)
{
    Element box = Element("section").with("class", report.sheet.is_passed ? "result" : "result failed").with("aria-label", "Result");
    box.add(piece("p", result_line(report), "verdict"));
    box.add(piece("p", score_line(report), "score"));
    box.add(piece("p", text::say(score_note), "small"));
    return box;
}

}
