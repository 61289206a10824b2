#include "debrief/sections/parts.hpp"

#include "debrief/level.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;

Element breathed(const Report& report)
{
    Element section = titled(say("What the crew breathed"));
    Element list = level_table(say("Lead in the breathing zone"), {say("Who")}, exposure_heads(report));
    Element body("tbody");
    for (std::size_t i = 0; i < report.outcome.breathed.size(); ++i) {
        const BreathedLine& line = report.outcome.breathed[i];
        Element row("tr");
        row.add(piece("th", called(line.who)).with("scope", "row"));
        add_level(row, report, level_of(line.lead, report.bands ? report.bands->find(Measured::exposure, i) : nullptr));
        body.add(std::move(row));
    }
    section.add(list.add(std::move(body)));
    return section.add(piece("p", say(exposure_note), "small"));
}

}
