#include "window/run/site_plan.hpp"

#include "window/drawing/cloud.hpp"
#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/walls.hpp"
#include "window/run/cells.hpp"
#include "window/run/logged_step.hpp"
#include "window/run/openings.hpp"
#include "window/run/plan_names.hpp"
#include "window/run/plan_openings.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/room_wall.hpp"

#include "job/steps/lay_runner.hpp"
#include "site/place.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace flapdoor::window {

namespace {

bool holds_word(const std::string& id, std::string_view word) { return id.find(word) != std::string::npos; }

FurnitureKind kind_of(const std::string& id)
{
    constexpr std::array<std::pair<std::string_view, FurnitureKind>, 9> kinds{{{"crib", FurnitureKind::crib},
                                                                               {"bed", FurnitureKind::bed},
                                                                               {"sofa", FurnitureKind::sofa},
                                                                               {"couch", FurnitureKind::sofa},
                                                                               {"dresser", FurnitureKind::dresser},
                                                                               {"shel", FurnitureKind::shelf},
                                                                               {"chair", FurnitureKind::chair},
                                                                               {"table", FurnitureKind::table},
                                                                               {"desk", FurnitureKind::table}}};
    for (const auto& [word, kind] : kinds)
        if (holds_word(id, word)) return kind;
    return FurnitureKind::plain;
}

/// @param name  on it; empty: none
void draw_object(Board& board, const job::Object& object, bool is_covered, std::string_view name)
{
    if (holds_word(object.id.name, "radiator")) {
        draw_radiator(board, footprint_of(object));
        if (is_covered) draw_sheeting(board, corners(footprint_of(object)));
    }
    else {
        draw_furniture(board, footprint_of(object), kind_of(object.id.name), name, is_covered);
    }
}

/// Things of one moment that a place as found does not have.
struct Now {
    const Story& story;
    const Moment& moment;

    const drill::Frame& frame() const { return *moment.now; }
    bool is_sheeted(PaperPoint p) const
    {
        const plan::Raster& raster = story.film.rasters[story.film.work_room];
        const plan::Point at{Length{p.x}, Length{p.y}};
        return raster.rect().contains(at) && frame().is_sheeted[raster.cell_at(at)] != 0;
    }
};

drill::OpeningShot as_found(const job::Opening& opening) { return {opening.is_open, false, false, false}; }

void draw_sign_at(Board& board, const job::Scenario& scenario, const job::Opening& opening)
{
    const PlanOpening place = plan_opening(scenario, opening);
    const PaperPoint dir = along(place.from, place.to);
    draw_sign(board, place.to + dir * 0.28 - left_of(dir) * 0.30);
}

void draw_tack_pad_now(Board& board, const job::Scenario& scenario)
{
    const job::Opening* door = way_in(scenario);
    if (door == nullptr) return;
    const PaperBox strip = strip_along(plan_opening(scenario, *door), 0.14, 0.55, true);
    draw_tack_pad(board, grown(strip, -0.04), 0.0);
}

/// Plastic on the passage floor from the entrance on; the film knows only that it lies there.
void draw_runner(Board& board, const Now& now)
{
    const job::Scenario& scenario = now.story.inputs.scenario;
    for (const job::LogEntry& entry : now.story.log.entries) {
        const std::optional<job::LayRunner> step = entry.outcome == job::Outcome::done ? logged_step<job::LayRunner>(entry) : std::nullopt;
        const job::Opening* door = way_in(scenario);
        if (!step || door == nullptr) continue;
        const auto& zones = now.story.film.zones;
        for (std::size_t z = 0; z < zones.size(); ++z) {
            if (zones[z].id != step->zone) continue;
            const plan::Raster& raster = now.story.film.rasters[z];
            const plan::Point from = site::middle(*find_by_id(scenario.zones, door->zone), *door);
            std::vector<std::uint8_t> marked(raster.size(), 0);
            for (const std::size_t cell : raster.cells_within({from.x, from.y, {}, {}}, step->length)) marked[cell] = 1;
            draw_sheeted_cells(board, raster, marked);
        }
        return;
    }
}

/// The stretch of wall that is being worked on.
void draw_worked_parts(Board& board, const Now& now)
{
    if (now.moment.card >= now.story.log.entries.size()) return;
    const job::LogEntry& entry = now.story.log.entries[now.moment.card];
    if (now.moment.at > entry.end) return;
    const std::string id = job::parameter(entry, "component");
    for (const job::Component& component : now.story.inputs.scenario.components) {
        if (component.id.name != id) continue;
        const PaperBox line = paper(site::footprint(now.story.inputs.scenario, component));
        const Box box = board.view.at(line).inset(-board.px(9.0F));
        board.canvas.frame_box(box, board.theme().sheet, board.px(5.0F), board.px(5.0F));
        board.canvas.frame_box(box, board.theme().accent, board.px(2.4F), board.px(5.0F));
    }
}

std::string air_text(double micrograms_per_cubic_meter)
{
    if (micrograms_per_cubic_meter < 0.01) return std::string(text::say("no lead in the air"));
    const double digits = micrograms_per_cubic_meter;
    return text::say_with("air {} \xC2\xB5g/m\xC2\xB3", digits < 0.1 ? "< 0.1" : text::show_number(digits, 2));
}

/// The mixed air of each zone, by its concentration.
void draw_air(Board& board, const Now& now)
{
    for (std::size_t z = 0; z < now.story.film.zones.size(); ++z) {
        const double share = air_scale.share(now.frame().air_lead[z]);
        if (share <= 0.0) continue;
        const Color tint = faded(dust_ramp(share), 0.92 * std::min(share / 0.10, 1.0));
        board.canvas.fill_box(board.view.at(paper(site::footprint(now.story.film.zones[z]))), tint);
    }
}

/// Young clouds, parcel by parcel; the coarser the dust, the larger the dot.
void draw_points(Board& board, const Now& now)
{
    const PaperBox room = paper(site::footprint(now.story.film.zones[now.story.film.work_room]));
    for (const drill::PointShot& point : now.frame().points) {
        const Point at = board.at(room.low + PaperPoint{static_cast<double>(point.x), static_cast<double>(point.y)});
        const float radius = board.px(1.5F + 0.25F * static_cast<float>(point.size));
        draw_parcel(board, at, radius);
    }
}

void draw_measures(Board& board, NamePlaces& places, const job::Scenario& scenario)
{
    for (const job::Zone& zone : scenario.zones) {
        if (zone.role != job::ZoneRole::work_room) continue;
        const PaperBox floor = paper(site::footprint(zone));
        if (board.view.length(floor.width()) < board.px(110.0F)) continue; // too small to measure
        const double off = wall_thickness * 0.5;
        places.take(draw_dimension(board, {floor.low.x, floor.high.y + off}, {floor.high.x, floor.high.y + off}, 0.32));
        places.take(draw_dimension(board, {floor.low.x - off, floor.low.y}, {floor.low.x - off, floor.high.y}, 0.32));
    }
}

void draw_furnishings(Board& board, const job::Scenario& scenario, const Now* now)
{
    for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
        if (now != nullptr && now->frame().is_object_there[i] == 0) continue;
        const bool is_covered = now != nullptr && now->is_sheeted(footprint_of(scenario.objects[i]).center());
        draw_object(board, scenario.objects[i], is_covered, now == nullptr ? text::say(scenario.objects[i].title) : std::string_view());
    }
    for (const job::Counter& counter : scenario.counters)
        draw_furniture(board, paper(plan::Rect{counter.west, counter.south, counter.width, counter.depth}), FurnitureKind::counter,
                       std::string(text::say(counter.title)), false);
}

void draw_structure(Board& board, const job::Scenario& scenario, const Now* now)
{
    draw_walls(board, plan_walls(scenario.zones));
    for (std::size_t i = 0; i < scenario.openings.size(); ++i)
        draw_opening(board, scenario, scenario.openings[i], now ? now->frame().openings[i] : as_found(scenario.openings[i]));
    for (std::size_t i = 0; now != nullptr && i < scenario.openings.size(); ++i)
        if (now->frame().openings[i].has_sign) draw_sign_at(board, scenario, scenario.openings[i]);
}

/// Behind the wall that is shown in elevation: a line with ticks at its ends, and which way one looks.
void draw_chosen_wall(Board& board, const RoomWall& wall)
{
    const Theme& t = board.theme();
    const PaperPoint out = left_of(along(wall.left, wall.right));
    const Point a = board.at(wall.left + out * (wall_thickness * 0.5)), b = board.at(wall.right + out * (wall_thickness * 0.5));
    const Point way{static_cast<float>(out.x), static_cast<float>(-out.y)};
    const Point off = way * board.px(5.0F);
    const Point side{-way.y, way.x};
    board.canvas.line(a + off, b + off, t.sheet, board.px(6.0F));
    board.canvas.line(a + off, b + off, t.accent, board.px(2.6F));
    for (const Point end : {a, b}) board.canvas.line(end, end + way * board.px(9.0F), t.accent, board.px(2.6F));
    const Point foot = (a + b) * 0.5F + way * board.px(6.0F);
    const Point head[3] = {foot + side * board.px(7.0F), foot - side * board.px(7.0F), foot + way * board.px(9.0F)};
    board.canvas.fill_convex(head, t.accent);
}

void draw_floors(Board& board, const job::Scenario& scenario)
{
    for (const job::Zone& zone : scenario.zones) draw_floor(board, corners(paper(site::footprint(zone))));
}

}

void draw_site_in_small(Board& board, const job::Scenario& scenario)
{
    draw_floors(board, scenario);
    draw_furnishings(board, scenario, nullptr);
    draw_structure(board, scenario, nullptr);
}

std::vector<PlacedName> draw_empty_site(Board& board, const job::Scenario& scenario, const Box& window)
{
    NamePlaces places(window);
    draw_floors(board, scenario);
    draw_furnishings(board, scenario, nullptr);
    draw_structure(board, scenario, nullptr);
    draw_measures(board, places, scenario);
    draw_room_names(board, places, window, scenario.zones);
    return places.placed();
}

std::vector<PlacedName> draw_site(Board& board, const Story& story, const Moment& moment, const PlanLook& look, const std::vector<PictureId>& dust)
{
    const Now now{story, moment};
    const job::Scenario& scenario = story.inputs.scenario;
    NamePlaces places(look.window);
    for (const Box& box : look.taken) places.take(box);
    draw_floors(board, scenario);
    draw_furnishings(board, scenario, &now);
    if (look.view == ViewKind::airborne)
        draw_air(board, now);
    else
        for (std::size_t z = 0; z < dust.size(); ++z) board.canvas.picture(dust[z], board.view.at(paper(story.film.rasters[z].rect())));

    draw_sheeted_cells(board, story.film.rasters[story.film.work_room], now.frame().is_sheeted);
    for (std::size_t i = 0; i < scenario.objects.size(); ++i) // their edges again, for the dust lies on them too
        if (now.frame().is_object_there[i] != 0) board.canvas.frame_box(board.view.at(footprint_of(scenario.objects[i])), board.theme().ink, board.px(1.3F));
    if (now.frame().has_runner) draw_runner(board, now);
    if (now.frame().has_tack_pad) draw_tack_pad_now(board, scenario);
    draw_structure(board, scenario, &now);
    if (look.chosen_wall) draw_chosen_wall(board, room_wall(scenario, *look.chosen_wall));
    draw_worked_parts(board, now);
    if (look.view == ViewKind::airborne && look.shows_points) draw_points(board, now);
    draw_measures(board, places, scenario);
    draw_people(board, places, story, moment);
    for (std::size_t i = 0; i < scenario.objects.size(); ++i)
        if (now.frame().is_object_there[i] != 0 && !holds_word(scenario.objects[i].id.name, "radiator")) draw_thing_name(board, places, scenario.objects[i]);
    draw_room_names(board, places, look.window, scenario.zones,
                    [&](std::size_t z) { return look.view == ViewKind::airborne ? air_text(now.frame().air_lead[z]) : std::string(); });
    return places.placed();
}

}
