#include "window/run/site_plan.hpp"

#include "window/drawing/cloud.hpp"
#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/fixtures.hpp"
#include "window/drawing/people.hpp"
#include "window/drawing/walls.hpp"
#include "window/run/cells.hpp"
#include "window/run/openings.hpp"
#include "window/run/plan_openings.hpp"
#include "window/run/plan_part.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "site/place.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
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

/// What a thing is called, where dust lies on it: on a label, when there is room.
void draw_thing_name(Board& board, const job::Object& object)
{
    const std::string_view name = text::say(object.title);
    const Box box = board.view.at(footprint_of(object));
    const Point words = board.canvas.measure(name, TextStyle::small);
    if (holds_word(object.id.name, "radiator") || words.x + board.px(14.0F) > box.width() || words.y > box.height()) return;
    draw_label(board.canvas, board.ui, box.center(), name);
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
    for (const job::LogEntry& entry : now.story.log.entries) {
        if (entry.step != "lay-runner" || entry.outcome != job::Outcome::done) continue;
        const job::Card& card = now.story.inputs.plan.cards.at(static_cast<std::size_t>(entry.card));
        const auto* step = std::get_if<job::LayRunner>(&card.step);
        const job::Opening* door = way_in(now.story.inputs.scenario);
        if (step == nullptr || door == nullptr) return;
        const auto& zones = now.story.film.zones;
        for (std::size_t z = 0; z < zones.size(); ++z) {
            if (zones[z].id != step->zone) continue;
            const plan::Raster& raster = now.story.film.rasters[z];
            const plan::Point from = site::middle(*find_by_id(now.story.inputs.scenario.zones, door->zone), *door);
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

/// Names after all figures, each beside its own where nobody else stands.
void draw_people(Board& board, const Box& window, const Now& now)
{
    const auto& crew = now.story.inputs.scenario.crew;
    for (const Walker& walker : now.moment.crew)
        draw_person(board, walker.at, walker.facing, walker.has_gear ? Outfit::suit_and_respirator : Outfit::own_clothes, {},
                    walker.is_busy);
    const auto reach = [&](const Walker& walker) {
        return std::max(board.view.length(0.24), board.px(9.0F)) * (walker.is_busy ? 1.45F : 1.0F);
    };
    std::vector<Box> taken;
    for (const Walker& walker : now.moment.crew) taken.push_back(box_around(board.at(walker.at), Point{1.7F, 1.7F} * reach(walker)));
    for (std::size_t p = 0; p < now.moment.crew.size(); ++p) {
        const std::string name = short_name(debrief::called(crew[p].title));
        const Point words = board.canvas.measure(name, TextStyle::small);
        const Box tag = box_around(board.at(now.moment.crew[p].at), {words.x + board.px(10.0F), words.y + board.px(4.0F)});
        const float up = reach(now.moment.crew[p]) + words.y * 0.5F + board.px(6.0F);
        const float aside = reach(now.moment.crew[p]) + tag.width() * 0.5F + board.px(4.0F);
        const std::array<Point, 4> places{{{0.0F, -up}, {0.0F, up}, {aside, 0.0F}, {-aside, 0.0F}}};
        const auto is_free = [&](Point by) {
            return std::none_of(taken.begin(), taken.end(), [&](const Box& other) { return other.overlaps(tag.moved(by)); });
        };
        const auto* place = std::find_if(places.begin(), places.end(), is_free);
        const Box placed = tag.moved(place != places.end() ? *place : places.front());
        taken.push_back(placed.moved(
            {0.0F, std::clamp(0.0F, window.low.y - placed.low.y, std::max(window.high.y - placed.high.y, window.low.y - placed.low.y))}));
        board.canvas.fill_box(taken.back(), board.theme().ink, board.px(3.0F));
        board.canvas.text_in(taken.back(), name, TextStyle::small, board.theme().sheet, Align::center);
    }
}

/// Lines in the middle of a room, upright when they fit, turned in a narrow one; on a faint ground, to read over dust.
void draw_room_lines(Board& board, const Box& room, Point middle, const std::vector<std::string>& lines)
{
    const Theme& t = board.theme();
    Point size{};
    for (const std::string& line : lines) {
        const Point words = board.canvas.measure(line, TextStyle::small);
        size = {std::max(size.x, words.x), size.y + words.y};
    }
    const float line_height = size.y / static_cast<float>(lines.size());
    const Point whole = size + Point{board.px(10.0F), board.px(2.0F)};
    const bool fits_level = whole.x < room.width() && whole.y < room.height();
    const bool fits_turned = whole.y < room.width() && whole.x < room.height();
    if (!fits_level && !fits_turned) {
        if (lines.size() > 1) draw_room_lines(board, room, middle, {lines.front()});
        return;
    }
    board.canvas.fill_box(box_around(middle, fits_level ? whole : Point{whole.y, whole.x}), faded(t.floor, 0.85), board.px(3.0F));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const float off = (static_cast<float>(i) + 0.5F) * line_height - size.y * 0.5F;
        const Point words = board.canvas.measure(lines[i], TextStyle::small);
        if (fits_level)
            board.canvas.text(middle + Point{-words.x * 0.5F, off - words.y * 0.5F}, lines[i], TextStyle::small, t.ink);
        else
            board.canvas.text_turned(middle + Point{off, 0.0F}, -1.5707963F, lines[i], TextStyle::small, t.ink);
    }
}

/// Height in a room at which nobody stands in the middle, of a few that look well.
float free_height(const Board& board, const Box& room, const Now* now)
{
    const std::array<float, 5> shares{0.5F, 0.64F, 0.36F, 0.78F, 0.22F};
    for (const float share : shares) {
        const float y = room.low.y + room.height() * share;
        const Box around = box_around({room.center().x, y}, {board.px(110.0F), board.px(76.0F)});
        const auto stands_there = [&](const Walker& walker) { return around.contains(board.at(walker.at)); };
        if (now == nullptr || std::none_of(now->moment.crew.begin(), now->moment.crew.end(), stands_there)) return y;
    }
    return room.center().y;
}

/// @param now  null for a place as found
void draw_names(Board& board, const Box& window, const std::vector<job::Zone>& zones, const Now* now, ViewKind view)
{
    for (std::size_t z = 0; z < zones.size(); ++z) {
        const PaperBox floor = paper(site::footprint(zones[z]));
        std::vector<std::string> lines{std::string(text::say(zones[z].title))};
        if (now != nullptr && view == ViewKind::airborne) lines.push_back(air_text(now->frame().air_lead[z]));
        const Box whole = board.view.at(floor);
        const Box seen{{std::max(whole.low.x, window.low.x), std::max(whole.low.y, window.low.y)},
                       {std::min(whole.high.x, window.high.x), std::min(whole.high.y, window.high.y)}};
        if (seen.width() <= 0.0F || seen.height() <= 0.0F) continue;
        draw_room_lines(board, seen, {seen.center().x, free_height(board, seen, now)}, lines);
    }
}

void draw_measures(Board& board, const job::Scenario& scenario)
{
    for (const job::Zone& zone : scenario.zones) {
        if (zone.role != job::ZoneRole::work_room) continue;
        const PaperBox floor = paper(site::footprint(zone));
        if (board.view.length(floor.width()) < board.px(110.0F)) continue; // too small to measure
        const double off = wall_thickness * 0.5;
        draw_dimension(board, {floor.low.x, floor.high.y + off}, {floor.high.x, floor.high.y + off}, 0.32);
        draw_dimension(board, {floor.low.x - off, floor.low.y}, {floor.low.x - off, floor.high.y}, 0.32);
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

void draw_empty_site(Board& board, const job::Scenario& scenario, const Box& window)
{
    draw_floors(board, scenario);
    draw_furnishings(board, scenario, nullptr);
    draw_structure(board, scenario, nullptr);
    draw_names(board, window, scenario.zones, nullptr, ViewKind::there);
    draw_measures(board, scenario);
}

void draw_site(Board& board, const Story& story, const Moment& moment, const PlanLook& look, const std::vector<PictureId>& dust)
{
    const Now now{story, moment};
    const job::Scenario& scenario = story.inputs.scenario;
    draw_floors(board, scenario);
    draw_furnishings(board, scenario, &now);
    if (look.view == ViewKind::airborne)
        draw_air(board, now);
    else
        for (std::size_t z = 0; z < dust.size(); ++z) board.canvas.picture(dust[z], board.view.at(paper(story.film.rasters[z].rect())));

    draw_sheeted_cells(board, story.film.rasters[story.film.work_room], now.frame().is_sheeted);
    for (std::size_t i = 0; i < scenario.objects.size(); ++i) { // their edges again and their names, for the dust lies on them too
        if (now.frame().is_object_there[i] == 0) continue;
        board.canvas.frame_box(board.view.at(footprint_of(scenario.objects[i])), board.theme().ink, board.px(1.3F));
        draw_thing_name(board, scenario.objects[i]);
    }
    if (now.frame().has_runner) draw_runner(board, now);
    if (now.frame().has_tack_pad) draw_tack_pad_now(board, scenario);
    draw_structure(board, scenario, &now);
    draw_worked_parts(board, now);
    if (look.view == ViewKind::airborne && look.shows_points) draw_points(board, now);
    draw_names(board, look.window, scenario.zones, &now, look.view);
    draw_people(board, look.window, now);
    draw_measures(board, scenario);
}

}
