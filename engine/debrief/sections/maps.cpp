#include "debrief/sections/parts.hpp"

#include "debrief/floor_map.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

Element maps(const Report& report)
{
    Element section = titled(say("Floor maps"));
    Element row = Element("div").with("class", "maps");
    for (const MapShot& shot : report.maps) {
        Element figure("figure");
        figure.add(Element("figcaption").say(fmt::format("{}, {}", say(shot.title), text::show_clock(shot.frame.at))));
        figure.add(floor_map({report.scenario, report.rasters, report.work_room, shot.frame, say_with("Floor map: {}", say(shot.title))}, {}));
        row.add(std::move(figure));
    }
    section.add(std::move(row));
    std::string note(say("Each cell shows the lead on what lies open to the air there: floor, sheeting, sill or top of a thing. The ends of the color scale also stand for less and for more than they say."));
    if (report.maps.size() < 2) note += fmt::format(" {}", say("No picture from before the cleaning was kept of this run."));
    section.add(piece("p", note, "small"));
    return section;
}

}
