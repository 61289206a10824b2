#include "quiz/print/plan_figure.hpp"

#include "core/insist.hpp"
#include "job/walls.hpp"
#include "text/language.hpp"
#include "text/svg.hpp"

#include <algorithm>

namespace flapdoor::quiz {

namespace svg = text::svg;
using text::Element;

namespace {

/// Plan to px, north up.
struct Scale {
    plan::Rect window;
    double per_meter;

    svg::Point at(plan::Point p) const { return {(p.x - window.west).si * per_meter, (window.north() - p.y).si * per_meter}; }
    Element rect(const plan::Rect& r) const
    {
        const svg::Point corner = at({r.west, r.north()});
        return svg::rect(corner.x, corner.y, r.width.si * per_meter, r.depth.si * per_meter);
    }
};

void draw_opening(const job::Opening& opening, const job::Zone& zone, const Scale& scale, Element& drawing)
{
    const Length half = 0.06_m;
    plan::Rect strip = job::wall_strip(zone, opening.wall, opening.from, opening.width, half, half);
    drawing.add(scale.rect(strip).with("class", opening.kind == job::OpeningKindOf::door ? "door" : opening.kind == job::OpeningKindOf::window ? "window" : "register"));
}

constexpr const char* letter_style = "font-weight:700";

}

plan::Rect plan_window(const PointAtPlan& asked)
{
    plan::Rect all;
    bool is_first = true;
    const auto take = [&](const plan::Rect& r) {
        if (is_first) all = r;
        const Length west = std::min(all.west, r.west), south = std::min(all.south, r.south);
        all = {west, south, std::max(all.east(), r.east()) - west, std::max(all.north(), r.north()) - south};
        is_first = false;
    };
    for (const job::Zone& zone : asked.site->zones)
        if (zone.role != job::ZoneRole::room) take(job::floor_of(zone));
    for (const Region& region : asked.regions) take(region.place);
    return plan::grown(all, 0.6_m);
}

Element plan_figure(const PointAtPlan& asked, double width)
{
    insist(asked.site != nullptr, "a question about a plan knows its scenario");
    const plan::Rect window = plan_window(asked);
    const Scale scale{window, width / window.width.si};
    Element drawing = svg::drawing(width, window.depth.si * scale.per_meter, text::say("Plan of the drill, north up"));
    for (const job::Zone& zone : asked.site->zones) {
        const plan::Rect floor = plan::intersection(job::floor_of(zone), window);
        if (floor.area().si <= 0.0) continue;
        drawing.add(scale.rect(floor).with("class", "ink"));
    }
    for (const job::Object& object : asked.site->objects) {
        const plan::Rect place{object.west, object.south, object.width, object.depth};
        if (window.contains(place)) drawing.add(scale.rect(place).with("class", "frame"));
    }
    for (const job::Opening& opening : asked.site->openings)
        if (const job::Zone* zone = job::find_by_id(asked.site->zones, opening.zone)) draw_opening(opening, *zone, scale, drawing);
    for (const job::Zone& zone : asked.site->zones) {
        const plan::Rect floor = plan::intersection(job::floor_of(zone), window);
        if (floor.width < 1.0_m || floor.depth < 0.6_m) continue;
        const svg::Point corner = scale.at({floor.west, floor.north()});
        drawing.add(svg::label({corner.x + 6.0, corner.y + 16.0}, svg::fitted(text::say(zone.title), floor.width.si * scale.per_meter - 12.0, 12.0), svg::Anchor::start, 12.0).with("class", "muted"));
    }
    for (std::size_t i = 0; i < asked.regions.size(); ++i) {
        const svg::Point p = scale.at(asked.regions[i].place.center());
        drawing.add(svg::circle(p, 11.0).with("class", "spot"));
        drawing.add(svg::label({p.x, p.y + 5.0}, std::string(1, static_cast<char>('A' + i % 26)), svg::Anchor::middle, 14.0).with("style", letter_style));
    }
    return drawing;
}

}
