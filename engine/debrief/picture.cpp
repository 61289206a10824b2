#include "debrief/picture.hpp"

#include "core/insist.hpp"
#include "debrief/page_style.hpp"
#include "text/language.hpp"
#include "text/page.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief {

std::string picture(const MapScene& scene, const MapLook& look)
{
    text::Element drawing = floor_map(scene, look);
    drawing.with("xmlns", "http://www.w3.org/2000/svg");
    drawing.add(text::Element("style").say(text::page_style() + page_style()));
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + drawing.html() + "\n";
}

std::string picture(const Report& report, std::size_t map)
{
    insist(map < report.maps.size(), "a report has the map that is asked for");
    const MapShot& shot = report.maps[map];
    return picture(MapScene{report.scenario, report.rasters, report.work_room, shot.frame, fmt::format("{}: {}", text::say(report.scenario.title), text::say(shot.title))});
}

std::string picture(const job::Scenario& scenario, const drill::Film& film, const drill::Frame& frame, const std::string& title)
{
    return picture(MapScene{scenario, film.rasters, film.work_room, frame, title});
}

}
