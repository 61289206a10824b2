#include "debrief/plan_drawing.hpp"

#include "site/place.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::Element;
using text::say;
using text::to_say;

namespace {

/// A stretch of wall in px, with the direction into its room.
struct Stretch {
    svg::Point from, to;
    svg::Point inward;      ///< of length 1

    svg::Point middle() const { return {(from.x + to.x) / 2.0, (from.y + to.y) / 2.0}; }
    Stretch moved(double into_room) const
    {
        const auto shift = [&](svg::Point p) { return svg::Point{p.x + inward.x * into_room, p.y + inward.y * into_room}; };
        return {shift(from), shift(to), inward};
    }
};

Element line_along(const Stretch& stretch, std::string_view class_name)
{
    return svg::line(stretch.from, stretch.to).with("class", class_name);
}

svg::Point inward_of(job::WallSide side)
{
    switch (side) {
        case job::WallSide::south: return {0.0, -1.0};
        case job::WallSide::north: return {0.0, 1.0};
        case job::WallSide::west: return {1.0, 0.0};
        case job::WallSide::east: return {-1.0, 0.0};
    }
    return {};
}

Stretch stretch_of(const job::Zone& zone, const job::Opening& opening, const PlanScale& scale)
{
    const plan::Rect on_wall = site::along_wall(zone, opening.wall, opening.from, opening.width, Length{});
    return {scale.at({on_wall.west, on_wall.south}), scale.at({on_wall.east(), on_wall.north()}), inward_of(opening.wall)};
}

/// A zigzag along a stretch: sheets that hang in an opening.
Element flap(const Stretch& stretch)
{
    constexpr int teeth = 8;
    std::vector<svg::Point> points;
    for (int i = 0; i <= teeth; ++i) {
        const double along = static_cast<double>(i) / teeth, out = i % 2 == 0 ? -2.5 : 2.5;
        points.push_back({stretch.from.x + (stretch.to.x - stretch.from.x) * along + stretch.inward.x * out,
                          stretch.from.y + (stretch.to.y - stretch.from.y) * along + stretch.inward.y * out});
    }
    return svg::polyline(points).with("class", "sheet-line");
}

void draw_leaf_or_glass(const job::Opening& opening, const drill::OpeningShot& shot, const Stretch& wall, Element& group)
{
    if (opening.kind == job::OpeningKindOf::window) {
        group.add(line_along(wall.moved(-2.5), "thin"));
        group.add(line_along(wall.moved(2.5), "thin"));
        if (!shot.is_open) group.add(line_along(wall, "thin"));
        return;
    }
    if (opening.kind == job::OpeningKindOf::door) {
        group.add(line_along(wall, shot.is_open ? "dotted" : "leaf"));
        return;
    }
    const Stretch face = wall.moved(5.0);
    group.add(svg::polygon({wall.from, wall.to, face.to, face.from}).with("class", shot.is_open ? "register" : "register shut"));
}

Element draw_opening(const job::Zone& zone, const job::Opening& opening, const drill::OpeningShot& shot, const PlanScale& scale)
{
    const Stretch wall = stretch_of(zone, opening, scale);
    Element group = svg::group("opening");
    group.add(Element("title").say(fmt::format("{}, {}{}{}", say(opening.title), shot.is_open ? say("open") : say("closed"), shot.is_covered ? say(", covered") : "",
                                               shot.has_flap ? say(", with flap door") : "")));
    const bool is_register = job::is_register(opening.kind);
    if (!is_register) group.add(line_along(wall, "gap"));
    draw_leaf_or_glass(opening, shot, wall, group);
    if (shot.has_flap) group.add(flap(wall));
    if (shot.is_covered) group.add(line_along(wall.moved(is_register ? 8.0 : 5.0), "cover"));
    return group;
}

void draw_thing(const std::string& title, const plan::Rect& where, const PlanScale& scale, Element& group)
{
    if (!scale.shows(where)) return;
    group.add(scale.rect(where).with("class", "thing").add(Element("title").say(title)));
    const double room = where.width.si * scale.per_meter - 4.0;
    if (svg::text_width(title, 10.0) > room || where.depth.si * scale.per_meter < 14.0) return;
    const svg::Point middle = scale.at(where.center());
    group.add(svg::label({middle.x, middle.y + 3.5}, title, svg::Anchor::middle, 10.0));
}

Element draw_things(const job::Scenario& scenario, const drill::Frame& frame, const PlanScale& scale)
{
    Element group = svg::group("things");
    for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
        const job::Object& object = scenario.objects[i];
        if (i < frame.is_object_there.size() && !frame.is_object_there[i]) continue;
        draw_thing(std::string(say(object.title)), {object.west, object.south, object.width, object.depth}, scale, group);
    }
    for (const job::Counter& counter : scenario.counters)
        draw_thing(std::string(say(counter.title)), {counter.west, counter.south, counter.width, counter.depth}, scale, group);
    for (const job::Sill& sill : scenario.sills) draw_thing(std::string(say(sill.title)), site::footprint(scenario, sill), scale, group);
    return group;
}

/// The outline of all sheeted cells as one path of short strokes between sheeted and bare neighbors.
Element sheeting_edge(const drill::Frame& frame, const plan::Raster& raster, const PlanScale& scale)
{
    std::string path;
    const auto is_sheeted = [&](std::size_t row, std::size_t column) {
        return row < raster.rows() && column < raster.columns() && frame.is_sheeted[row * raster.columns() + column] != 0;
    };
    const auto corner = [&](std::size_t row, std::size_t column) {
        const plan::Rect& rect = raster.rect();
        return scale.at({rect.west + raster.cell_width() * static_cast<double>(column), rect.south + raster.cell_depth() * static_cast<double>(row)});
    };
    const auto stroke = [&](svg::Point from, svg::Point to) {
        path += fmt::format("M{} {}L{} {}", text::coordinate(from.x), text::coordinate(from.y), text::coordinate(to.x), text::coordinate(to.y));
    };
    // Along the walls the edge of the sheeting is the wall itself: only edges between two cells of the room are drawn.
    for (std::size_t row = 0; row < raster.rows(); ++row) {
        for (std::size_t column = 0; column < raster.columns(); ++column) {
            if (column > 0 && is_sheeted(row, column) != is_sheeted(row, column - 1)) stroke(corner(row, column), corner(row + 1, column));
            if (row > 0 && is_sheeted(row, column) != is_sheeted(row - 1, column)) stroke(corner(row, column), corner(row, column + 1));
        }
    }
    return svg::path(path).with("class", "sheet-line").with("fill", "none");
}

void draw_zone_name(const job::Zone& zone, const PlanScale& scale, Element& group)
{
    const plan::Rect shown = plan::intersection(site::footprint(zone), scale.window);
    const double room = shown.width.si * scale.per_meter - 10.0;
    if (room < 20.0) return;
    const svg::Point corner = scale.at({shown.west, shown.north()});
    const svg::Point at{corner.x + 9.0, corner.y + 26.0};
    const std::string_view look = zone.role == job::ZoneRole::work_room ? "zone-name strong" : "zone-name";
    const bool is_upright = svg::text_width(say(zone.title), 11.0) > room && shown.depth > shown.width;
    if (!is_upright) {
        group.add(svg::label(at, svg::fitted(std::string(say(zone.title)), room, 11.0), svg::Anchor::start, 11.0).with("class", look));
        return;
    }
    const double long_room = shown.depth.si * scale.per_meter - 24.0;
    group.add(svg::label(at, svg::fitted(std::string(say(zone.title)), long_room, 11.0), svg::Anchor::start, 11.0)
                  .with("class", look)
                  .with("transform", fmt::format("rotate(90 {} {})", text::coordinate(at.x), text::coordinate(at.y))));
}

/// Are these the same wall? Rectangles of the window come from sums and differences.
bool is_same(Length a, Length b) { return a - b < 1.0_mm && b - a < 1.0_mm; }

/// Walls of one zone; a broken line where the window cuts it off.
void draw_walls(const job::Zone& zone, const PlanScale& scale, Element& group)
{
    const plan::Rect all = site::footprint(zone), shown = plan::intersection(all, scale.window);
    const auto edge = [&](bool is_wall, plan::Point from, plan::Point to) {
        group.add(svg::line(scale.at(from), scale.at(to)).with("class", is_wall ? "wall" : "cut"));
    };
    edge(is_same(shown.south, all.south), {shown.west, shown.south}, {shown.east(), shown.south});
    edge(is_same(shown.north(), all.north()), {shown.west, shown.north()}, {shown.east(), shown.north()});
    edge(is_same(shown.west, all.west), {shown.west, shown.south}, {shown.west, shown.north()});
    edge(is_same(shown.east(), all.east()), {shown.east(), shown.south}, {shown.east(), shown.north()});
}

struct KeyEntry {
    std::string_view word;
    std::string_view look;
};

constexpr std::array<KeyEntry, 7> key_entries{{{to_say("window"), "window"},
                                               {to_say("door, closed"), "leaf"},
                                               {to_say("way open"), "dotted"},
                                               {to_say("register"), "register"},
                                               {to_say("covered"), "cover"},
                                               {to_say("flap door"), "flap"},
                                               {to_say("edge of sheeting"), "sheet-line"}}};

Element key_sign(std::string_view look, const Stretch& stretch)
{
    if (look == "flap") return flap(stretch);
    if (look == "register") {
        const Stretch low = stretch.moved(-2.5), high = stretch.moved(2.5);
        return svg::polygon({low.from, low.to, high.to, high.from}).with("class", "register");
    }
    if (look == "window") {
        Element lines = svg::group();
        for (const double out : {-2.5, 0.0, 2.5}) lines.add(line_along(stretch.moved(out), "thin"));
        return lines;
    }
    return line_along(stretch, look);
}

}

svg::Point PlanScale::at(plan::Point p) const
{
    return {left + (p.x - window.west).si * per_meter, top + (window.north() - p.y).si * per_meter};
}

Element PlanScale::rect(const plan::Rect& part) const
{
    const plan::Rect shown = plan::intersection(part, window);
    const svg::Point corner = at({shown.west, shown.north()});
    return svg::rect(corner.x, corner.y, shown.width.si * per_meter, shown.depth.si * per_meter);
}

bool PlanScale::shows(const plan::Rect& part) const { return plan::overlap(part, window); }

Element plan_drawing(const job::Scenario& scenario, const drill::Frame& frame, const plan::Raster& work_room, const PlanScale& scale)
{
    Element drawing = svg::group("plan");
    if (frame.is_sheeted.size() == work_room.size()) drawing.add(sheeting_edge(frame, work_room, scale));
    drawing.add(draw_things(scenario, frame, scale));
    for (const job::Zone& zone : scenario.zones)
        if (scale.shows(site::footprint(zone))) draw_walls(zone, scale, drawing);
    for (std::size_t i = 0; i < scenario.openings.size(); ++i) {
        const job::Opening& opening = scenario.openings[i];
        const job::Zone* zone = find_by_id(scenario.zones, opening.zone);
        const plan::Rect place = site::along_wall(*zone, opening.wall, opening.from, opening.width, Length{});
        if (!scale.window.contains(place, 1.0_mm)) continue;
        drawing.add(draw_opening(*zone, opening, i < frame.openings.size() ? frame.openings[i] : drill::OpeningShot{}, scale));
    }
    for (const job::Zone& zone : scenario.zones)
        if (scale.shows(site::footprint(zone))) draw_zone_name(zone, scale, drawing);
    return drawing;
}

Element scale_and_north(const PlanScale& scale, svg::Point corner, double width)
{
    Element group = svg::group("scale");
    const double foot = meters_per_foot * scale.per_meter;
    const int feet = foot * 10.0 < width * 0.5 ? 10 : 5;
    for (int i = 0; i < feet; ++i)
        group.add(svg::rect(corner.x + foot * i, corner.y + 6.0, foot, 5.0).with("class", i % 2 == 0 ? "bar-ink" : "bar-paper"));
    group.add(svg::label({corner.x, corner.y + 24.0}, "0", svg::Anchor::start, 10.5));
    group.add(svg::label({corner.x + foot * feet, corner.y + 24.0}, fmt::format("{} ft", feet), svg::Anchor::middle, 10.5));

    const double x = corner.x + width - 10.0, y = corner.y + 2.0;
    group.add(svg::polygon({{x, y}, {x + 5.5, y + 20.0}, {x, y + 15.5}, {x - 5.5, y + 20.0}}).with("class", "bar-ink"));
    group.add(svg::label({x - 10.0, y + 16.0}, "N", svg::Anchor::end, 12.0));
    return group;
}

Element plan_key(svg::Point corner, double width, double& height)
{
    constexpr double row = 17.0, sign = 24.0, size = 10.5;
    Element key = svg::group("key");
    double x = corner.x, y = corner.y + 8.0;
    for (const KeyEntry& entry : key_entries) {
        const double needed = sign + 6.0 + svg::text_width(say(entry.word), size);
        if (x > corner.x && x + needed > corner.x + width) x = corner.x, y += row;
        key.add(key_sign(entry.look, {{x, y}, {x + sign, y}, {0.0, 1.0}}));
        key.add(svg::label({x + sign + 6.0, y + 3.6}, say(entry.word), svg::Anchor::start, size));
        x += needed + 12.0;
    }
    height = y + row / 2.0 - corner.y;
    return key;
}

}
