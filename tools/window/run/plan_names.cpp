#include "window/run/plan_names.hpp"

#include "window/drawing/people.hpp"
#include "window/run/plan_part.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "site/place.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr int most_rings = 6;

/// How far a figure reaches about its middle.
float reach_of(const Board& board, const Walker& walker)
{
    return std::max(board.view.length(0.24), board.px(9.0F)) * (walker.is_busy ? 1.45F : 1.0F);
}

void draw_name_tag(Board& board, const Box& tag, Point figure, float reach, const std::string& name)
{
    const Point way = tag.center() - figure;
    const float far = std::hypot(way.x, way.y);
    if (far > reach + tag.height() + board.px(24.0F)) board.canvas.line(figure + way * (reach / far), tag.center(), board.theme().ink, board.px(1.2F));
    board.canvas.fill_box(tag, board.theme().ink, board.px(3.0F));
    board.canvas.text_in(tag, name, TextStyle::small, board.theme().sheet, Align::center);
}

struct RoomLines {
    std::vector<std::string> lines;
    Point size; ///< level
    float line_height = 0.0F;
};

RoomLines measured(const Board& board, std::vector<std::string> lines)
{
    RoomLines room{std::move(lines), {}, 0.0F};
    for (const std::string& line : room.lines) {
        const Point words = board.canvas.measure(line, TextStyle::small);
        room.size = {std::max(room.size.x, words.x), room.size.y + words.y};
    }
    room.line_height = room.size.y / static_cast<float>(room.lines.size());
    room.size = room.size + Point{board.px(10.0F), board.px(2.0F)};
    return room;
}

/// On a faint ground, to read over dust.
void draw_room_lines(Board& board, const Box& box, const RoomLines& room, bool is_turned)
{
    const Theme& t = board.theme();
    board.canvas.fill_box(box, faded(t.floor, 0.85), board.px(3.0F));
    const float height = room.line_height * static_cast<float>(room.lines.size());
    for (std::size_t i = 0; i < room.lines.size(); ++i) {
        const float off = (static_cast<float>(i) + 0.5F) * room.line_height - height * 0.5F;
        const Point words = board.canvas.measure(room.lines[i], TextStyle::small);
        if (is_turned)
            board.canvas.text_turned(box.center() + Point{off, 0.0F}, -1.5707963F, room.lines[i], TextStyle::small, t.ink);
        else
            board.canvas.text(box.center() + Point{-words.x * 0.5F, off - words.y * 0.5F}, room.lines[i], TextStyle::small, t.ink);
    }
}

bool draw_room_name(Board& board, NamePlaces& places, const Box& seen, const std::string& name, const RoomLines& room)
{
    for (const bool is_turned : {false, true}) {
        const Point size = is_turned ? Point{room.size.y, room.size.x} : room.size;
        const std::vector<Box> where = places_within(seen, size);
        if (const auto box = places.place(name, room.lines.front(), where)) {
            draw_room_lines(board, *box, room, is_turned);
            return true;
        }
    }
    return false;
}

/// Beside a room that is too small for its name, on no other room, with a line to it.
void draw_name_beside(Board& board, NamePlaces& places, const Box& room, const std::vector<Box>& others, const std::string& name, const RoomLines& lines)
{
    std::vector<Box> where = places_around(room.center(), lines.size, room.height() * 0.5F + board.px(8.0F), board.px(14.0F), 4);
    for (const Box& box : places_around(room.center(), lines.size, room.width() * 0.5F + board.px(8.0F), board.px(14.0F), 4)) where.push_back(box);
    std::erase_if(where, [&](const Box& box) { return std::any_of(others.begin(), others.end(), [&](const Box& other) { return other.overlaps(box); }); });
    const auto box = places.place(name, lines.lines.front(), where);
    if (!box) return;
    const Point end{std::clamp(box->center().x, room.low.x, room.high.x), std::clamp(box->center().y, room.low.y, room.high.y)};
    board.canvas.line(box->center(), end, board.theme().ink, board.px(1.2F));
    board.canvas.fill_circle(end, board.px(2.6F), board.theme().ink);
    draw_room_lines(board, *box, lines, false);
}

}

void draw_people(Board& board, NamePlaces& places, const Story& story, const Moment& moment)
{
    const auto& crew = story.inputs.scenario.crew;
    for (const Walker& walker : moment.crew) {
        draw_person(board, walker.at, walker.facing, walker.has_gear ? Outfit::suit_and_respirator : Outfit::own_clothes, {}, walker.is_busy);
        places.take(box_around(board.at(walker.at), Point{1.9F, 1.9F} * reach_of(board, walker)));
    }
    for (std::size_t p = 0; p < moment.crew.size(); ++p) {
        const Walker& walker = moment.crew[p];
        const std::string name = short_name(debrief::called(crew[p].title));
        const Point words = board.canvas.measure(name, TextStyle::small);
        const float reach = reach_of(board, walker);
        const std::vector<Box> around = places_around(board.at(walker.at), {words.x + board.px(10.0F), words.y + board.px(4.0F)},
                                                      reach + board.px(4.0F), board.px(14.0F), most_rings);
        if (const auto tag = places.place("person/" + crew[p].id.name, name, around)) draw_name_tag(board, *tag, board.at(walker.at), reach, name);
    }
}

void draw_thing_name(Board& board, NamePlaces& places, const job::Object& object)
{
    const std::string name(text::say(object.title));
    const Box thing = board.view.at(footprint_of(object));
    const Point words = board.canvas.measure(name, TextStyle::small);
    if (words.x + board.px(14.0F) > thing.width() || words.y > thing.height()) return;
    const Point label = words + Point{board.px(14.0F), board.px(6.0F)};
    const Box place[] = {box_around(thing.center(), label)};
    if (places.place("thing/" + object.id.name, name, place)) draw_label(board.canvas, board.ui, thing.center(), name);
}

void draw_room_names(Board& board, NamePlaces& places, const Box& window, const std::vector<job::Zone>& zones,
                     const std::function<std::string(std::size_t zone)>& more)
{
    for (std::size_t z = 0; z < zones.size(); ++z) {
        const Box whole = board.view.at(paper(site::footprint(zones[z])));
        const Box seen{{std::max(whole.low.x, window.low.x), std::max(whole.low.y, window.low.y)},
                       {std::min(whole.high.x, window.high.x), std::min(whole.high.y, window.high.y)}};
        if (seen.width() <= 0.0F || seen.height() <= 0.0F) continue;
        const std::string title(text::say(zones[z].title));
        const std::string name = "room/" + zones[z].id.name;
        const std::string further = more ? more(z) : std::string();
        if (!further.empty() && draw_room_name(board, places, seen, name, measured(board, {title, further}))) continue;
        const RoomLines only_title = measured(board, {title});
        if (draw_room_name(board, places, seen, name, only_title) || zones[z].role != job::ZoneRole::work_room) continue;
        std::vector<Box> rooms;
        for (const job::Zone& zone : zones) rooms.push_back(board.view.at(paper(site::footprint(zone))));
        draw_name_beside(board, places, whole, rooms, name, only_title);
    }
}

}
