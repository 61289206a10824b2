#include "window/run/site_section.hpp"

#include "window/drawing/cloud.hpp"
#include "window/drawing/elevation.hpp"
#include "window/drawing/people.hpp"
#include "window/run/dust_pictures.hpp"
#include "window/run/openings.hpp"

#include "site/place.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {


bool is_end_wall(const Section& section, job::WallSide wall)
{
    const bool faces_east_west = wall == job::WallSide::east || wall == job::WallSide::west;
    return section.runs_east == faces_east_west;
}

/// Zones that the cut goes through.
std::vector<std::size_t> cut_zones(const Section& section, const job::Scenario& scenario)
{
    std::vector<std::size_t> cut;
    for (std::size_t z = 0; z < scenario.zones.size(); ++z) {
        const job::Zone& zone = scenario.zones[z];
        if (zone.role != job::ZoneRole::work_room && zone.role != job::ZoneRole::passage) continue;
        const PaperBox floor = paper(site::footprint(zone));
        if (section.along(floor.low) >= section.from - 1e-6 && section.along(floor.high) <= section.to + 1e-6) cut.push_back(z);
    }
    return cut;
}

void draw_air_bands(Board& board, const Section& section, const Story& story, const Moment& moment, const std::vector<std::size_t>& zones)
{
    for (const std::size_t z : zones) {
        const double share = air_scale.share(moment.now->air_lead[z]);
        const PaperBox floor = paper(site::footprint(story.film.zones[z]));
        if (share <= 0.0) continue;
        const PaperBox air{{section.along(floor.low), 0.0}, {section.along(floor.high), story.film.zones[z].ceiling.si}};
        board.canvas.fill_box(board.view.at(air), faded(dust_ramp(share), 0.92 * std::min(share / 0.10, 1.0)));
    }
}

void draw_objects(Board& board, const Section& section, const Story& story, const Moment& moment)
{
    const auto& objects = story.inputs.scenario.objects;
    for (std::size_t i = 0; i < objects.size(); ++i) {
        const PaperBox plan = paper(plan::Rect{objects[i].west, objects[i].south, objects[i].width, objects[i].depth});
        if (moment.now->is_object_there[i] == 0 || section.along(plan.low) < section.from - 1e-6 ||
            section.along(plan.high) > section.to + 1e-6)
            continue;
        const Box box = board.view.at(PaperBox{{section.along(plan.low), 0.0}, {section.along(plan.high), objects[i].height.si}});
        board.canvas.fill_box(box, faded(board.theme().thing, 0.9));
        board.canvas.frame_box(box, board.theme().ink, board.px(1.2F));
    }
}

/// A window that the cut goes through: glass between head and sill, the sill reaching into the room.
void draw_cut_window(Board& board, double x, bool room_is_right, const job::Opening& window, bool is_open)
{
    const Theme& t = board.theme();
    const double half = wall_thickness * 0.5;
    const double low = window.above_floor.si;
    const double high = low + window.height.si;
    board.canvas.fill_box(board.view.at(PaperBox{{x - half, low}, {x + half, high}}), t.floor);
    const double sash_low = is_open ? (low + high) * 0.5 : low;
    board.canvas.fill_box(board.view.at(PaperBox{{x - half * 0.4, sash_low}, {x + half * 0.4, high}}), t.glass);
    board.canvas.frame_box(board.view.at(PaperBox{{x - half * 0.4, sash_low}, {x + half * 0.4, high}}), t.ink, board.px(1.2F));
    const double inner = room_is_right ? x - half : x + half;
    const double tip = room_is_right ? x + half + 0.12 : x - half - 0.12;
    const Box sill = board.view.at(PaperBox{{std::min(inner, tip), low - 0.05}, {std::max(inner, tip), low}});
    board.canvas.fill_box(sill, t.thing);
    board.canvas.frame_box(sill, t.ink, board.px(1.2F));
}

/// Two sheets on the room's side of the doorway: the first taped round, the second a curtain with its dowel.
void draw_hung_flap(Board& board, double x, double way, double top)
{
    const auto sheet = [&](double off, double sway) {
        std::array<PaperPoint, 5> line{};
        for (std::size_t i = 0; i < line.size(); ++i) {
            const double down = static_cast<double>(i) / static_cast<double>(line.size() - 1);
            line[i] = {x + way * (off + sway * down * down), top * (1.0 - down * 0.985)};
        }
        return line;
    };
    const std::array<PaperPoint, 5> first = sheet(0.07, 0.02);
    const std::array<PaperPoint, 5> second = sheet(0.13, 0.06);
    const HungSheet sheets[] = {{first, false, true}, {second, true, true}};
    draw_flap_section(board, sheets);
}

void draw_openings(Board& board, const Section& section, const Story& story, const Moment& moment)
{
    const job::Scenario& scenario = story.inputs.scenario;
    const PaperPoint room = paper(site::footprint(story.film.zones[story.film.work_room])).center();
    for (std::size_t i = 0; i < scenario.openings.size(); ++i) {
        const job::Opening& opening = scenario.openings[i];
        if (opening.zone != story.film.zones[story.film.work_room].id) continue;
        const PlanOpening place = plan_opening(scenario, opening);
        const drill::OpeningShot& shot = moment.now->openings[i];
        const double low = std::min(section.along(place.from), section.along(place.to));
        const double high = std::max(section.along(place.from), section.along(place.to));
        const double foot = opening.above_floor.si;
        if (!is_end_wall(section, opening.wall)) { // on the wall that one looks at, or on the one behind one's back
            const bool is_north_or_east = section.across(place.from) > section.across(room);
            if (is_north_or_east != section.runs_east) continue; // one looks north, or west
            const PaperBox face{{low, foot}, {high, foot + opening.height.si}};
            if (opening.kind == job::OpeningKindOf::door)
                draw_door_face(board, face);
            else if (opening.kind == job::OpeningKindOf::window)
                draw_window_face(board, face, shot.is_open);
            else {
                const Box box = board.view.at(face);
                board.canvas.fill_box(box, board.theme().field);
                for (float y = box.low.y + board.px(3.0F); y < box.high.y; y += board.px(3.0F))
                    board.canvas.line({box.low.x, y}, {box.high.x, y}, faded(board.theme().ink, shot.is_open ? 0.7 : 0.3), board.px(1.0F));
                board.canvas.frame_box(box, board.theme().ink, board.px(1.2F));
                if (shot.is_covered) board.canvas.frame_box(box.inset(-board.px(2.0F)), board.theme().tape, board.px(2.0F));
            }
            continue;
        }
        const double x = section.along(place.from);
        const bool room_is_right = section.along(room) > x;
        if (opening.kind == job::OpeningKindOf::window) draw_cut_window(board, x, room_is_right, opening, shot.is_open);
        if (opening.kind == job::OpeningKindOf::door) {
            const double half = wall_thickness * 0.5;
            board.canvas.fill_box(board.view.at(PaperBox{{x - half, 0.0}, {x + half, opening.height.si}}), board.theme().floor);
            if (shot.has_flap)
                draw_hung_flap(board, x, room_is_right ? 1.0 : -1.0, opening.height.si);
            else if (!shot.is_open || shot.is_covered)
                board.canvas.frame_box(board.view.at(PaperBox{{x - half * 0.4, 0.0}, {x + half * 0.4, opening.height.si}}),
                                       board.theme().ink, board.px(1.4F));
        }
    }
}

void draw_cloud(Board& board, const Section& section, const Story& story, const Moment& moment)
{
    const PaperBox room = paper(site::footprint(story.film.zones[story.film.work_room]));
    for (const drill::PointShot& point : moment.now->points) {
        const PaperPoint p = room.low + PaperPoint{static_cast<double>(point.x), static_cast<double>(point.y)};
        const Point at = board.at({section.along(p), static_cast<double>(point.z)});
        const float radius = board.px(1.3F + 0.22F * static_cast<float>(point.size));
        draw_parcel(board, at, radius);
    }
}

}

Section section_of(const job::Scenario& scenario)
{
    Section section;
    const job::Opening* door = way_in(scenario);
    section.runs_east = door == nullptr || door->wall == job::WallSide::east || door->wall == job::WallSide::west;
    bool is_first = true;
    for (const job::Zone& zone : scenario.zones) {
        const bool is_entered = door != nullptr && (zone.id == door->zone || zone.id == door->leads_to);
        if (zone.role != job::ZoneRole::work_room && !is_entered) continue;
        const PaperBox floor = paper(site::footprint(zone));
        section.from = is_first ? section.along(floor.low) : std::min(section.from, section.along(floor.low));
        section.to = is_first ? section.along(floor.high) : std::max(section.to, section.along(floor.high));
        section.ceiling = is_first ? zone.ceiling.si : std::max(section.ceiling, zone.ceiling.si);
        is_first = false;
    }
    return section;
}

void draw_site_section(Board& board, const Story& story, const Moment& moment, bool shows_points)
{
    const Section section = section_of(story.inputs.scenario);
    const std::vector<std::size_t> zones = cut_zones(section, story.inputs.scenario);
    draw_section_frame(board, section.from, section.to, section.ceiling);
    draw_air_bands(board, section, story, moment, zones);
    std::vector<double> walls;
    for (const std::size_t z : zones) {
        const PaperBox floor = paper(site::footprint(story.film.zones[z]));
        for (const double x : {section.along(floor.low), section.along(floor.high)})
            if (std::none_of(walls.begin(), walls.end(), [&](double w) { return std::abs(w - x) < 0.01; })) walls.push_back(x);
    }
    for (const double x : walls) draw_section_wall(board, x, wall_thickness, section.ceiling);
    draw_openings(board, section, story, moment);
    draw_objects(board, section, story, moment);
    if (shows_points) draw_cloud(board, section, story, moment);
    for (std::size_t p = 0; p < moment.crew.size(); ++p) {
        const std::size_t zone = moment.now->people[p].zone;
        if (std::find(zones.begin(), zones.end(), zone) == zones.end()) continue;
        const Walker& walker = moment.crew[p];
        const double way = section.runs_east ? std::cos(walker.facing) : std::sin(walker.facing);
        draw_person_in_section(board, section.along(walker.at), standing_height, way >= 0.0,
                               walker.has_gear ? Outfit::suit_and_respirator : Outfit::own_clothes);
    }
    draw_height_scale(board, section.from - wall_thickness, section.ceiling);
}

}
