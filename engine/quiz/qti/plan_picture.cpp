#include "quiz/qti/plan_picture.hpp"

#include "job/walls.hpp"
#include "quiz/kinds/point_at_plan.hpp"
#include "text/language.hpp"
#include "text/svg.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::quiz {

using text::Element;
namespace svg = text::svg;

namespace {

constexpr double longest_side = 640.0, margin = 16.0;     // px

plan::Rect around_zones(const job::Scenario& scenario)
{
    double west = 0.0, south = 0.0, east = 0.0, north = 0.0;
    bool is_first = true;
    for (const job::Zone& zone : scenario.zones) {
        const plan::Rect floor = job::floor_of(zone);
        west = is_first ? floor.west.si : std::min(west, floor.west.si);
        south = is_first ? floor.south.si : std::min(south, floor.south.si);
        east = is_first ? floor.east().si : std::max(east, floor.east().si);
        north = is_first ? floor.north().si : std::max(north, floor.north().si);
        is_first = false;
    }
    return {Length{west}, Length{south}, Length{east - west}, Length{north - south}};
}

Element box_of(const PlanPicture& picture, const plan::Rect& rect, std::string_view fill, std::string_view stroke)
{
    const int x = picture.x_of(rect.west), y = picture.y_of(rect.north());
    // A strip along a wall is still to be seen.
    return svg::rect(x, y, std::max(3, picture.x_of(rect.east()) - x), std::max(3, picture.y_of(rect.south) - y)).with("fill", fill).with("stroke", stroke).with("stroke-width", 1.5);
}

void add_name(Element& to, const PlanPicture& picture, const plan::Rect& rect, std::string_view name, double size)
{
    const double room = rect.width.si * picture.per_meter - 8.0;
    if (room < 24.0 || rect.depth.si * picture.per_meter < size + 4.0) return;
    to.add(svg::label({static_cast<double>(picture.x_of(rect.west)) + 6.0, static_cast<double>(picture.y_of(rect.north())) + size + 4.0}, svg::fitted(name, room, size), svg::Anchor::start, size)
               .with("font-family", "sans-serif"));
}

template <class Things>
void add_things(Element& to, const PlanPicture& picture, const job::Scenario& scenario, const Things& things, std::string_view fill, bool is_named)
{
    for (const auto& thing : things) {
        const auto place = place_of_thing(scenario, thing.id.name);
        if (!place) continue;
        to.add(box_of(picture, *place, fill, "#333333"));
        if (is_named) add_name(to, picture, *place, text::say(thing.title), 10.0);
    }
}

}

int PlanPicture::x_of(Length x) const { return std::clamp(static_cast<int>(std::lround((x.si - left) * per_meter)), 0, width); }

int PlanPicture::y_of(Length y) const { return std::clamp(static_cast<int>(std::lround((top - y.si) * per_meter)), 0, height); }

PlanPicture plan_picture(const job::Scenario& scenario)
{
    const plan::Rect all = around_zones(scenario);
    PlanPicture picture;
    picture.per_meter = longest_side / std::max({all.width.si, all.depth.si, 1.0});
    picture.width = static_cast<int>(std::ceil(all.width.si * picture.per_meter + 2.0 * margin));
    picture.height = static_cast<int>(std::ceil(all.depth.si * picture.per_meter + 2.0 * margin));
    picture.left = all.west.si - margin / picture.per_meter;
    picture.top = all.north().si + margin / picture.per_meter;

    Element drawing = svg::drawing(picture.width, picture.height, text::say(scenario.title));
    drawing.with("xmlns", "http://www.w3.org/2000/svg");
    drawing.add(svg::rect(0, 0, picture.width, picture.height).with("fill", "#ffffff"));
    for (const job::Zone& zone : scenario.zones) {
        const plan::Rect floor = job::floor_of(zone);
        drawing.add(box_of(picture, floor, "#f4f4f0", "#222222"));
        add_name(drawing, picture, floor, text::say(zone.title), 13.0);
    }
    add_things(drawing, picture, scenario, scenario.counters, "#dddddd", false);
    add_things(drawing, picture, scenario, scenario.objects, "#e4e4e4", true);
    add_things(drawing, picture, scenario, scenario.openings, "#ffffff", false);
    picture.svg = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + drawing.html() + "\n";
    return picture;
}

}
