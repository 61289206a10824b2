#include "window/run/wall_elevation.hpp"

#include "window/drawing/cloud.hpp"
#include "window/drawing/containment.hpp"
#include "window/drawing/dimension.hpp"
#include "window/drawing/elevation.hpp"
#include "window/drawing/people.hpp"
#include "window/hands_on/flap_picture.hpp"
#include "window/run/dust_pictures.hpp"
#include "window/run/hung_flap.hpp"
#include "window/run/openings.hpp"
#include "window/run/plan_part.hpp"
#include "window/widgets/words.hpp"

#include "site/place.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace flapdoor::window {

namespace {

constexpr double at_the_wall = 0.75;     // m: things that begin nearer stand against it
constexpr double foot_strip = 0.30;      // m of floor whose dust is shown at the foot
constexpr double casing = 0.09;          // m around a door or window

/// What one wall shows of a moment.
struct Seen {
    const Story& story;
    const Moment& moment;
    const RoomWall& wall;
    const ElevationLook& look;

    const job::Scenario& scenario() const { return story.inputs.scenario; }
    const drill::Frame& frame() const { return *moment.now; }
    /// From side to side of a strip of the plan.
    PaperBox face(const PaperBox& plan, double foot, double head) const
    {
        const double a = wall.across(plan.low), b = wall.across(plan.high);
        return {{std::min(a, b), foot}, {std::max(a, b), head}};
    }
    double gap(const PaperBox& plan) const { return std::min(wall.off(plan.low), wall.off(plan.high)); }
};

PaperBox face_of(const RoomWall& wall, const job::Scenario& scenario, const job::Opening& opening)
{
    const PlanOpening place = plan_opening(scenario, opening);
    const double a = wall.across(place.from), b = wall.across(place.to);
    return {{std::min(a, b), opening.above_floor.si}, {std::max(a, b), (opening.above_floor + opening.height).si}};
}

// --- openings -----------------------------------------------------------------------------------------------------------

/// Sheeting over an opening, taped all round.
void draw_taped_cover(Board& board, const PaperBox& face)
{
    const PaperBox sheet = grown(face, 0.10);
    const PaperBox film{{sheet.low.x, std::max(sheet.low.y, 0.0)}, sheet.high};
    draw_sheeting(board, corners(film));
    const std::vector<PaperPoint> c = corners(film);
    for (std::size_t i = 0; i < c.size(); ++i) draw_tape(board, c[i], c[(i + 1) % c.size()]);
}

void draw_register_face(Board& board, const PaperBox& face, const drill::OpeningShot& shot)
{
    const Theme& t = board.theme();
    const Box box = board.view.at(face);
    board.canvas.fill_box(box, t.field);
    for (float y = box.low.y + board.px(3.0F); y < box.high.y - board.px(1.0F); y += board.px(3.0F))
        board.canvas.line({box.low.x, y}, {box.high.x, y}, faded(t.ink, shot.is_open ? 0.7 : 0.3), board.px(1.0F));
    board.canvas.frame_box(box, t.ink, board.px(1.2F));
    if (!shot.is_open) board.canvas.line({box.low.x, box.center().y}, {box.high.x, box.center().y}, t.ink, board.px(2.6F)); // its louver is shut
    if (shot.is_covered) draw_taped_cover(board, face);
}

void draw_door_now(Board& board, const Seen& seen, const job::Opening& opening, const PaperBox& face, const drill::OpeningShot& shot)
{
    const Theme& t = board.theme();
    if (shot.has_flap) {
        if (const auto door = hung_flap(seen.story, seen.moment.at)) {
            Board doorway = board;
            doorway.view.pan({board.view.length(face.low.x), 0.0F});
            return draw_flap_face(doorway, {}, *door, true, true);
        }
    }
    draw_door_face(board, face);
    const bool has_leaf = opening.id.name.find("arch") == std::string::npos;
    const Box hole = board.view.at(face);
    if (has_leaf && !shot.is_open && !shot.has_flap) { // the leaf, with two panels and its knob
        board.canvas.fill_box(hole, t.sheet);
        board.canvas.frame_box(hole, t.ink, board.px(1.2F));
        const double inset = std::min(0.14, face.width() * 0.2);
        const double middle = face.low.y + face.height() * 0.45;
        for (const auto& [low, high] : {std::pair{face.low.y + 0.25, middle - 0.08}, std::pair{middle + 0.08, face.high.y - 0.15}})
            board.canvas.frame_box(board.view.at(PaperBox{{face.low.x + inset, low}, {face.high.x - inset, high}}), faded(t.ink, 0.6), board.px(1.0F));
        board.canvas.fill_circle(board.at({face.high.x - 0.07, 0.95}), board.px(2.4F), t.ink);
    }
    if (shot.is_covered || shot.has_flap) draw_taped_cover(board, face);
}

void draw_openings(Board& board, const Seen& seen)
{
    const job::Scenario& scenario = seen.scenario();
    for (std::size_t i = 0; i < scenario.openings.size(); ++i) {
        const job::Opening& opening = scenario.openings[i];
        if (!has_opening(seen.wall, scenario, opening)) continue;
        const PaperBox face = face_of(seen.wall, scenario, opening);
        const drill::OpeningShot& shot = seen.frame().openings[i];
        switch (opening.kind) {
            case job::OpeningKindOf::door:
                draw_door_now(board, seen, opening, face, shot);
                break;
            case job::OpeningKindOf::window:
                draw_window_face(board, face, shot.is_open);
                if (shot.is_covered) draw_taped_cover(board, face);
                break;
            default:
                draw_register_face(board, face, shot);
        }
    }
}

// --- parts that are worked on -------------------------------------------------------------------------------------------

std::string part_in_work(const Seen& seen)
{
    if (seen.moment.card >= seen.story.log.entries.size()) return {};
    const job::LogEntry& entry = seen.story.log.entries[seen.moment.card];
    return seen.moment.at > entry.end ? std::string() : job::parameter(entry, "component");
}

/// Dashed where work is due, whole and strong where it is done just now.
void draw_parts(Board& board, const Seen& seen)
{
    const Theme& t = board.theme();
    const std::string in_work = part_in_work(seen);
    for (const ElevationThing& part : parts_of(seen.wall, seen.scenario())) {
        const Box box = board.view.at(part.box);
        if (part.id == in_work) {
            board.canvas.frame_box(box.inset(-board.px(3.0F)), t.sheet, board.px(5.0F), board.px(3.0F));
            board.canvas.frame_box(box.inset(-board.px(3.0F)), t.accent, board.px(2.4F), board.px(3.0F));
            continue;
        }
        const Point c[4] = {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
        for (std::size_t i = 0; i < 4; ++i) board.canvas.dashes(c[i], c[(i + 1) % 4], t.accent, board.px(1.4F), board.px(5.0F), board.px(4.0F));
    }
}

// --- things -------------------------------------------------------------------------------------------------------------

void draw_thing(Board& board, const PaperBox& face, bool is_covered)
{
    const Box box = board.view.at(face);
    board.canvas.fill_box(box, faded(board.theme().thing, 0.92));
    board.canvas.frame_box(box, board.theme().ink, board.px(1.2F));
    if (is_covered) draw_sheeting(board, corners(face));
}

void draw_things(Board& board, const Seen& seen)
{
    const job::Scenario& scenario = seen.scenario();
    const plan::Raster& raster = seen.story.film.rasters[seen.story.film.work_room];
    for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
        const PaperBox plan = footprint_of(scenario.objects[i]);
        if (seen.frame().is_object_there[i] == 0 || scenario.objects[i].zone != seen.story.film.zones[seen.story.film.work_room].id || seen.gap(plan) > at_the_wall) continue;
        const PaperPoint middle = plan.center();
        const bool is_covered = seen.frame().is_sheeted[raster.cell_at({Length{middle.x}, Length{middle.y}})] != 0;
        draw_thing(board, seen.face(plan, 0.0, scenario.objects[i].height.si), is_covered);
    }
    for (const job::Counter& counter : scenario.counters) {
        const PaperBox plan = paper(plan::Rect{counter.west, counter.south, counter.width, counter.depth});
        if (counter.zone == seen.story.film.zones[seen.story.film.work_room].id && seen.gap(plan) <= at_the_wall)
            draw_thing(board, seen.face(plan, 0.0, counter.height.si), false);
    }
}

// --- dust ---------------------------------------------------------------------------------------------------------------

/// From the left as one looks at the wall; the film has its columns from the west or south.
struct Panels {
    const drill::WallShot* shot = nullptr;
    std::size_t columns = 0;
    bool runs_back = false;

    double lead(std::size_t band, std::size_t column) const
    {
        return static_cast<double>(shot->lead[band * columns + (runs_back ? columns - 1 - column : column)]);
    }
};

std::optional<Panels> panels_of(const drill::Frame& frame, job::WallSide side)
{
    const auto shot = std::find_if(frame.walls.begin(), frame.walls.end(), [&](const drill::WallShot& w) { return w.wall == side; });
    if (shot == frame.walls.end() || shot->bands == 0 || shot->lead.size() < shot->bands) return std::nullopt;
    return Panels{&*shot, shot->lead.size() / shot->bands, side == job::WallSide::south || side == job::WallSide::east};
}

void draw_panels(Board& board, const Seen& seen)
{
    const auto panels = panels_of(seen.frame(), seen.wall.side);
    if (!panels) return;
    const double wide = seen.wall.width() / static_cast<double>(panels->columns);
    const double tall = seen.wall.ceiling / panels->shot->bands;
    for (std::size_t band = 0; band < panels->shot->bands; ++band) {
        for (std::size_t column = 0; column < panels->columns; ++column) {
            const double share = floor_scale.share(panels->lead(band, column));
            if (share <= 0.0) continue;
            const double x = wide * static_cast<double>(column), y = tall * static_cast<double>(band);
            Box box = board.view.at(PaperBox{{x, y}, {x + wide, y + tall}});
            box.high.x += 0.5F;
            board.canvas.fill_box(box, dust_ramp(share));
        }
        if (band > 0) // where one panel ends and the next begins
            board.canvas.dashes(board.at({0.0, tall * static_cast<double>(band)}), board.at({seen.wall.width(), tall * static_cast<double>(band)}), faded(board.theme().ink, 0.35), 1.0F, board.px(3.0F), board.px(4.0F));
    }
}

/// Height of what lies on top of a place of the floor near the wall.
double top_at(const Seen& seen, PaperPoint p)
{
    const job::Scenario& scenario = seen.scenario();
    double top = 0.0;
    for (std::size_t i = 0; i < scenario.objects.size(); ++i)
        if (seen.frame().is_object_there[i] != 0 && footprint_of(scenario.objects[i]).contains(p)) top = std::max(top, scenario.objects[i].height.si);
    for (const job::Counter& counter : scenario.counters)
        if (paper(plan::Rect{counter.west, counter.south, counter.width, counter.depth}).contains(p)) top = std::max(top, counter.height.si);
    for (const job::Sill& sill : scenario.sills)
        if (const job::Opening* window = find_by_id(scenario.openings, sill.window); window != nullptr && paper(site::footprint(scenario, sill)).contains(p))
            top = std::max(top, window->above_floor.si);
    return top;
}

struct Lying {
    double lead = 0.0, coverage = 0.0, threshold = 0.0;
    int cells = 0;
};

/// A narrow band on the floor, the sills and the things at the wall, colored as the plan colors them.
void draw_lying_dust(Board& board, const Seen& seen)
{
    const std::size_t room = seen.story.film.work_room;
    const plan::Raster& raster = seen.story.film.rasters[room];
    std::map<std::pair<std::size_t, double>, Lying> lying; // by column along the wall and by height
    const bool runs_east = seen.wall.side == job::WallSide::north || seen.wall.side == job::WallSide::south;
    const double cell = (runs_east ? raster.cell_width() : raster.cell_depth()).si;
    for (std::size_t c = 0; c < raster.size(); ++c) {
        const PaperPoint at = paper(raster.center(c));
        if (seen.wall.off(at) > foot_strip) continue;
        Lying& here = lying[{static_cast<std::size_t>(std::max(seen.wall.across(at), 0.0) / cell), top_at(seen, at)}];
        here.lead += static_cast<double>(seen.frame().lead[room][c]);
        here.coverage += static_cast<double>(seen.frame().seen[room][c]);
        here.threshold += least_seen(seen.story, seen.frame(), room, c);
        ++here.cells;
    }
    for (const auto& [place, here] : lying) {
        const double count = here.cells;
        const double share = floor_scale.share(here.lead / count);
        const bool is_seen = here.coverage >= here.threshold;
        if (seen.look.view == ViewKind::seen ? !is_seen : share <= 0.0) continue;
        const Box box = board.view.at(PaperBox{{static_cast<double>(place.first) * cell, place.second}, {static_cast<double>(place.first + 1) * cell, place.second}});
        const Color fill = seen.look.view == ViewKind::seen ? grain_color : dust_ramp(share);
        board.canvas.fill_box({{box.low.x, box.low.y - board.px(5.0F)}, {box.high.x + 0.5F, box.low.y}}, fill);
    }
}

/// Plastic on the floor at the wall's foot, with its edge.
void draw_sheeting_at_foot(Board& board, const Seen& seen)
{
    const plan::Raster& raster = seen.story.film.rasters[seen.story.film.work_room];
    std::vector<std::pair<double, double>> runs;
    const bool runs_east = seen.wall.side == job::WallSide::north || seen.wall.side == job::WallSide::south;
    const double half = (runs_east ? raster.cell_width() : raster.cell_depth()).si * 0.5;
    for (std::size_t c = 0; c < raster.size(); ++c) {
        const PaperPoint at = paper(raster.center(c));
        if (seen.wall.off(at) <= foot_strip && seen.frame().is_sheeted[c] != 0 && top_at(seen, at) <= 0.0) runs.emplace_back(seen.wall.across(at) - half, seen.wall.across(at) + half);
    }
    std::sort(runs.begin(), runs.end());
    std::optional<std::pair<double, double>> run;
    const auto lay = [&] {
        if (!run) return;
        const Box box = board.view.at(PaperBox{{run->first, 0.0}, {run->second, 0.0}});
        const Box film{{box.low.x, box.low.y - board.px(8.0F)}, {box.high.x, box.low.y - board.px(5.0F)}};
        board.canvas.fill_box(film, board.theme().sheeting);
        for (const float x : {film.low.x, film.high.x}) board.canvas.line({x, film.low.y - board.px(3.0F)}, {x, box.low.y}, board.theme().tape, board.px(2.0F));
    };
    for (const auto& next : runs) {
        if (run && next.first <= run->second + 1e-6) {
            run->second = std::max(run->second, next.second);
            continue;
        }
        lay();
        run = next;
    }
    lay();
}

void draw_air_tint(Board& board, const Seen& seen)
{
    const double share = air_scale.share(seen.frame().air_lead[seen.story.film.work_room]);
    if (share <= 0.0) return;
    board.canvas.fill_box(board.view.at(PaperBox{{0.0, 0.0}, {seen.wall.width(), seen.wall.ceiling}}), faded(dust_ramp(share), 0.92 * std::min(share / 0.10, 1.0)));
}

void draw_cloud(Board& board, const Seen& seen)
{
    const PaperBox room = paper(site::footprint(seen.story.film.zones[seen.story.film.work_room]));
    for (const drill::PointShot& point : seen.frame().points) {
        const PaperPoint p = room.low + PaperPoint{static_cast<double>(point.x), static_cast<double>(point.y)};
        draw_parcel(board, board.at({seen.wall.across(p), static_cast<double>(point.z)}), board.px(1.3F + 0.22F * static_cast<float>(point.size)));
    }
}

void draw_people_before(Board& board, const Seen& seen)
{
    const PaperPoint to_the_right = along(seen.wall.left, seen.wall.right);
    for (std::size_t p = 0; p < seen.moment.crew.size(); ++p) {
        if (seen.frame().people[p].zone != seen.story.film.work_room) continue;
        const Walker& walker = seen.moment.crew[p];
        const double way = std::cos(walker.facing) * to_the_right.x + std::sin(walker.facing) * to_the_right.y;
        draw_person_in_section(board, seen.wall.across(walker.at), standing_height, way >= 0.0, walker.has_gear ? Outfit::suit_and_respirator : Outfit::own_clothes);
    }
}

/// Names of the openings, of stretches of wall to be worked on and of the part in work, beside people and each other.
void draw_words(Board& board, NamePlaces& places, const Seen& seen)
{
    if (board.view.length(1.0) < board.px(60.0F)) return; // a strip: no room for words in it
    const Box wall = board.view.at(PaperBox{{0.0, 0.0}, {seen.wall.width(), seen.wall.ceiling}});
    for (std::size_t p = 0; p < seen.moment.crew.size(); ++p) {
        const double x = seen.wall.across(seen.moment.crew[p].at);
        if (seen.frame().people[p].zone == seen.story.film.work_room) places.take(board.view.at(PaperBox{{x - 0.25, 0.0}, {x + 0.25, standing_height + 0.1}}));
    }
    const auto name = [&](const ElevationThing& thing, const std::string& kind) {
        const std::string words(text::say(thing.title));
        const Point size = board.canvas.measure(words, TextStyle::small) + Point{board.px(14.0F), board.px(6.0F)};
        const Box box = board.view.at(thing.box);
        std::vector<Box> where;
        const auto offer = [&](float y) {
            const float x = std::clamp(box.center().x, wall.low.x + size.x * 0.5F, std::max(wall.high.x - size.x * 0.5F, wall.low.x + size.x * 0.5F));
            where.push_back(box_around({x, y}, size));
        };
        if (size.x <= box.width() && size.y <= box.height())
            for (const float share : {0.3F, 0.5F, 0.7F, 0.15F, 0.85F}) offer(box.low.y + box.height() * share);
        offer(box.low.y - size.y * 0.5F - board.px(12.0F));
        offer(box.high.y + size.y * 0.5F + board.px(16.0F));
        std::erase_if(where, [&](const Box& place) { return !wall.contains(place); });
        if (const auto place = places.place(kind + thing.id, words, where)) draw_label(board.canvas, board.ui, place->center(), words);
    };
    const std::string in_work = part_in_work(seen);
    const auto is_named = [&](const ElevationThing& part) {
        const job::Component* component = find_by_id(seen.scenario().components, job::ComponentId{part.id});
        return part.id == in_work || (component != nullptr && component->opening.name.empty());
    };
    for (const ElevationThing& thing : openings_in(seen.wall, seen.scenario())) name(thing, "opening/");
    for (const ElevationThing& thing : parts_of(seen.wall, seen.scenario()))
        if (is_named(thing)) name(thing, "part/");
}

}

std::vector<ElevationThing> openings_in(const RoomWall& wall, const job::Scenario& scenario)
{
    std::vector<ElevationThing> things;
    for (const job::Opening& opening : scenario.openings)
        if (has_opening(wall, scenario, opening)) things.push_back({opening.id.name, opening.title, face_of(wall, scenario, opening)});
    std::stable_sort(things.begin(), things.end(), [](const ElevationThing& a, const ElevationThing& b) { return a.box.low.x < b.box.low.x; });
    return things;
}

std::vector<ElevationThing> parts_of(const RoomWall& wall, const job::Scenario& scenario)
{
    std::vector<ElevationThing> parts;
    for (const job::Component& component : scenario.components) {
        if (component.kind == job::ComponentKindOf::ceiling) continue; // it lies over all four
        if (const job::Opening* opening = find_by_id(scenario.openings, component.opening)) {
            if (!has_opening(wall, scenario, *opening)) continue;
            const PaperBox face = face_of(wall, scenario, *opening);
            const bool is_around = component.kind == job::ComponentKindOf::trim;
            parts.push_back({component.id.name, component.title, is_around ? PaperBox{{face.low.x - casing, std::max(face.low.y - casing, 0.0)}, {face.high.x + casing, face.high.y + casing}} : face});
            continue;
        }
        const PaperBox line = paper(site::footprint(scenario, component));
        if (component.wall != wall.side || std::abs(wall.off(line.center())) > casing) continue;
        const double a = wall.across(line.low), b = wall.across(line.high);
        const double width = std::abs(b - a);
        if (width <= 0.0) continue;
        const double tall = std::min(component.area.si / width, wall.ceiling);
        const double low = std::clamp(component.height.si - tall * 0.5, 0.0, wall.ceiling - tall);
        parts.push_back({component.id.name, component.title, {{std::min(a, b), low}, {std::max(a, b), low + tall}}});
    }
    return parts;
}

std::optional<double> lead_on_wall(const drill::Frame& frame, const RoomWall& wall, PaperPoint at)
{
    const auto panels = panels_of(frame, wall.side);
    if (!panels || at.x < 0.0 || at.x >= wall.width() || at.y < 0.0 || at.y >= wall.ceiling) return std::nullopt;
    return panels->lead(static_cast<std::size_t>(at.y / wall.ceiling * panels->shot->bands), static_cast<std::size_t>(at.x / wall.width() * static_cast<double>(panels->columns)));
}

std::vector<PlacedName> draw_wall_elevation(Board& board, const Story& story, const Moment& moment, const RoomWall& wall, const ElevationLook& look)
{
    const Seen seen{story, moment, wall, look};
    NamePlaces places(look.window);
    draw_section_frame(board, 0.0, wall.width(), wall.ceiling);
    if (look.view == ViewKind::airborne) draw_air_tint(board, seen);
    if (look.view == ViewKind::there) draw_panels(board, seen);
    draw_openings(board, seen);
    draw_parts(board, seen);
    draw_things(board, seen);
    if (look.view != ViewKind::airborne) draw_lying_dust(board, seen);
    draw_sheeting_at_foot(board, seen);
    for (const double x : {-wall_thickness * 0.5, wall.width() + wall_thickness * 0.5}) draw_section_wall(board, x, wall_thickness, wall.ceiling);
    if (look.shows_points && look.view != ViewKind::seen) draw_cloud(board, seen);
    draw_people_before(board, seen);
    draw_words(board, places, seen);
    draw_height_scale(board, -wall_thickness, wall.ceiling);
    return places.placed();
}

}
