#include "debrief/floor_map.hpp"

#include "debrief/plan_drawing.hpp"
#include "debrief/wording.hpp"
#include "site/place.hpp"
#include "text/chart.hpp"
#include "text/language.hpp"
#include "text/ramp.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr double margin = 8.0;
constexpr double least_shown = 0.1, most_shown = 1e5;   // ug/ft2
constexpr int shades = 48;                              // more cannot be told apart, and fewer groups make a shorter page

plan::Rect united(const plan::Rect& a, const plan::Rect& b)
{
    const Length west = std::min(a.west, b.west), south = std::min(a.south, b.south);
    return {west, south, std::max(a.east(), b.east()) - west, std::max(a.north(), b.north()) - south};
}

bool leads_to_work_room(const job::Scenario& scenario, const job::Zone& zone, const job::Zone& work_room)
{
    return std::any_of(scenario.openings.begin(), scenario.openings.end(), [&](const job::Opening& o) {
        return (o.zone == zone.id && o.leads_to == work_room.id) || (o.zone == work_room.id && o.leads_to == zone.id);
    });
}

int shade_of(double lead)
{
    const double share = text::share_of_decades(lead, least_shown, most_shown);
    return std::min(shades - 1, static_cast<int>(share * shades));
}

plan::Rect cell_rect(const plan::Raster& raster, std::size_t cell)
{
    const Length width = raster.cell_width(), depth = raster.cell_depth();
    return {raster.rect().west + width * static_cast<double>(raster.column(cell)), raster.rect().south + depth * static_cast<double>(raster.row(cell)), width, depth};
}

/// A cell, half a pixel larger to the east and south: neighbors of one shade must not show a seam where a printer rounds.
Element cell_shape(const plan::Rect& where, const PlanScale& scale)
{
    const Length seam{0.5 / scale.per_meter};
    return scale.rect({where.west, where.south - seam, where.width + seam, where.depth + seam}).with("class", "cell");
}

/// Cells of one zone with any load, grouped by their shade.
void draw_cells(const plan::Raster& raster, const std::vector<float>& lead, const PlanScale& scale, Element& drawing)
{
    std::map<int, Element> groups;
    for (std::size_t cell = 0; cell < lead.size(); ++cell) {
        const plan::Rect where = cell_rect(raster, cell);
        if (!(lead[cell] > 0.0F) || !scale.shows(where)) continue;
        const int shade = shade_of(static_cast<double>(lead[cell]));
        auto group = groups.find(shade);
        if (group == groups.end()) group = groups.emplace(shade, svg::group("cells").with("fill", to_hex(text::dust_color((shade + 0.5) / shades)))).first;
        group->second.add(cell_shape(where, scale));
    }
    for (auto& [shade, group] : groups) drawing.add(std::move(group));
}

/// The color scale with its unit, and its note beside it in lines that fit.
Element legend(svg::Point corner, double width, double& height)
{
    Element group = svg::group("legend");
    const double length = std::min(width, 420.0);
    text::Axis axis = map_axis();
    constexpr double room_for_all = 400.0;
    if (length < room_for_all)      // every second decade, or the large ones run into each other
        for (std::size_t i = axis.ticks.size(); i-- > 0;)
            if (i % 2 == 1) axis.ticks.erase(axis.ticks.begin() + static_cast<std::ptrdiff_t>(i));
    group.add(text::dust_legend(axis, std::string(say("lead, ug/ft2")), length)
                  .with("x", corner.x)
                  .with("y", corner.y)
                  .with("height", 56.0));
    double y = corner.y + 70.0;
    std::string line;
    const auto write = [&] {
        group.add(svg::label({corner.x + length / 2.0, y}, line, svg::Anchor::middle, 11.0).with("class", "note"));
        y += 14.0;
        line.clear();
    };
    std::string_view rest = say(loading_note);
    while (!rest.empty()) {
        const std::string_view word = rest.substr(0, rest.find(' '));
        rest.remove_prefix(std::min(rest.size(), word.size() + 1));
        if (!line.empty() && svg::text_width(fmt::format("{} {}", line, word), 11.0) > length) write();
        line += fmt::format("{}{}", line.empty() ? "" : " ", word);
    }
    write();
    height = y - corner.y - 6.0;
    return group;
}

/// Signs above, colors below.
Element keys(svg::Point corner, double width, double& height)
{
    double signs_height = 0.0, colors_height = 0.0;
    Element group = svg::group("keys");
    group.add(plan_key(corner, width, signs_height));
    group.add(legend({corner.x, corner.y + signs_height + 8.0}, width, colors_height));
    height = signs_height + 8.0 + colors_height;
    return group;
}

double greatest(const std::vector<float>& lead) { return lead.empty() ? 0.0 : static_cast<double>(*std::max_element(lead.begin(), lead.end())); }

std::string description(const MapScene& scene)
{
    std::string text = say_with("Floor plan, north up, at {}. Highest lead on a cell", text::show_clock(scene.frame.at));
    for (std::size_t zone = 0; zone < scene.rasters.size() && zone < scene.frame.lead.size(); ++zone)
        text += fmt::format("; {}: {} ug/ft2", say(scene.scenario.zones[zone].title), text::show_number(greatest(scene.frame.lead[zone]), 2));
    return fmt::format("{} ({}).", text, say(loading_note));
}

}

text::Axis map_axis() { return text::log_axis(least_shown, most_shown); }

plan::Rect map_window(const MapScene& scene, const MapLook& look)
{
    const std::vector<job::Zone>& zones = scene.scenario.zones;
    const job::Zone& work_room = zones.at(scene.work_room);
    plan::Rect near = site::footprint(work_room), all = near;
    for (const job::Zone& zone : zones) {
        all = united(all, site::footprint(zone));
        const bool is_close = zone.role == job::ZoneRole::passage || zone.role == job::ZoneRole::closet;
        if (is_close && leads_to_work_room(scene.scenario, zone, work_room)) near = united(near, site::footprint(zone));
    }
    return look.shows_all_rooms ? all : plan::intersection(plan::grown(near, 4.0_ft), all);
}

Element floor_map(const MapScene& scene, const MapLook& look)
{
    PlanScale scale{map_window(scene, look), margin, look.has_title ? 44.0 : margin, 0.0};
    scale.per_meter = (look.width - 2.0 * margin) / scale.window.width.si;
    const double below_plan = scale.top + scale.height() + 6.0;

    double key_height = 0.0;
    Element key = look.has_key ? keys({margin, below_plan + 36.0}, look.width - 2.0 * margin, key_height) : Element("g");

    Element drawing = svg::drawing(look.width, below_plan + 36.0 + key_height, scene.title, description(scene));
    drawing.with("class", "map");
    if (look.has_title) {
        const std::string title = fmt::format("{}, {}", scene.title, text::show_clock(scene.frame.at));
        drawing.add(svg::label({margin, 24.0}, svg::fitted(title, look.width - 2.0 * margin, 15.0), svg::Anchor::start, 15.0).with("class", "strong"));
    }
    for (std::size_t zone = 0; zone < scene.rasters.size() && zone < scene.frame.lead.size(); ++zone)
        draw_cells(scene.rasters[zone], scene.frame.lead[zone], scale, drawing);
    drawing.add(plan_drawing(scene.scenario, scene.frame, scene.rasters.at(scene.work_room), scale));
    drawing.add(scale_and_north(scale, {margin, below_plan}, look.width - 2.0 * margin));
    if (look.has_key) drawing.add(std::move(key));
    return drawing;
}

Element floor_map_key(double width)
{
    double height = 0.0;
    Element key = keys({margin, margin}, width - 2.0 * margin, height);
    return svg::drawing(width, height + 2.0 * margin, say("Signs and colors of the map"), say_with("Signs of the plan and the color scale: lead, ug/ft2 ({}).", say(loading_note))).with("class", "key").add(std::move(key));
}

}
