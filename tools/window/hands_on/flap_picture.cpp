#include "window/hands_on/flap_picture.hpp"

#include "window/drawing/containment.hpp"
#include "window/drawing/elevation.hpp"
#include "window/drawing/people.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double frame_depth = 0.14; // m, wall and casing
constexpr double second_off = 0.025; // m: the sheets lie on each other; drawn apart to be told apart
constexpr double tape_width = 0.05;

std::vector<PaperPoint> paper_line(const std::vector<mechanics::SectionPoint>& points, double off)
{
    std::vector<PaperPoint> line;
    for (const mechanics::SectionPoint& p : points) line.push_back({p.x.si + off, p.height.si});
    return line;
}

std::vector<PaperPoint> straight(double top, double foot, double off) { return {{off, top}, {off, foot}}; }

/// A fold in a sheet that runs upright: out and back.
void add_fold(std::vector<PaperPoint>& line, double height)
{
    for (const PaperPoint p : {PaperPoint{0.0, height + 0.03}, PaperPoint{-0.05, height + 0.015}, PaperPoint{0.05, height - 0.015},
                               PaperPoint{0.0, height - 0.03}})
        line.push_back(p);
}

/// What of the slit sheet does not move: above the slit's head and below its foot.
void draw_still_film(Board& board, const mechanics::FlapDoor& door, bool has_torn, const mechanics::SwingFrame* frame)
{
    const double head = (door.slit_foot + door.slit_length).si;
    std::vector<PaperPoint> above{{0.0, door.height.si}};
    if (door.has_folds) add_fold(above, door.height.si - 0.06);
    above.push_back({0.0, head});
    std::vector<PaperPoint> below{{0.0, door.slit_foot.si}};
    if (has_torn && frame != nullptr) { // it hangs from the edges of the slit
        const mechanics::SectionPoint foot = frame->first.back();
        below = {{foot.x.si, foot.height.si}, {foot.x.si, std::max(foot.height.si - door.slit_foot.si, 0.01)}};
    }
    else {
        if (door.has_folds && door.slit_foot.si > 0.10) add_fold(below, 0.06);
        below.push_back({0.0, 0.0});
    }
    const HungSheet still[] = {{above, false, true}, {below, false, false}};
    draw_flap_section(board, still);
    if (door.is_taped && !has_torn)
        board.canvas.fill_box(box_around(board.at({0.0, 0.0}), {board.px(10.0F), board.px(7.0F)}), board.theme().tape, board.px(1.0F));
}

void draw_tape_strip(Board& board, const PaperBox& strip)
{
    const Box box = board.view.at(strip);
    board.canvas.fill_box(box, board.theme().sheet);
    draw_hatch(board, corners(strip), board.px(7.0F), board.theme().tape, board.px(1.4F), false);
    board.canvas.frame_box(box, board.theme().tape, board.px(1.6F));
}

void draw_doorway_face(Board& board, const PaperBox& hole)
{
    const Theme& t = board.theme();
    const PaperBox wall{{hole.low.x - 0.16, 0.0}, {hole.high.x + 0.16, hole.high.y + 0.16}};
    board.canvas.fill_box(board.view.at(wall), t.sheet);
    board.canvas.frame_box(board.view.at(PaperBox{{hole.low.x - 0.09, 0.0}, {hole.high.x + 0.09, hole.high.y + 0.09}}), t.ink,
                           board.px(1.2F));
    board.canvas.fill_box(board.view.at(hole), mixed(t.floor, t.wall, 0.10));
    board.canvas.frame_box(board.view.at(hole), t.ink, board.px(1.6F));
    board.canvas.line(board.at({wall.low.x, 0.0}), board.at({wall.high.x, 0.0}), t.wall, board.px(3.0F));
}

void draw_slit(Board& board, double x, double foot, double head, bool is_cut)
{
    const Theme& t = board.theme();
    const Point a = board.at({x, head});
    const Point b = board.at({x, foot});
    if (!is_cut) return board.canvas.dashes(a, b, t.ink, board.px(1.4F), board.px(7.0F), board.px(5.0F));
    board.canvas.line(a, b, t.sheet, board.px(5.0F));
    board.canvas.line(a, b, t.ink, board.px(2.2F));
    for (const Point end : {a, b}) board.canvas.line(end - Point{board.px(7.0F), 0.0F}, end + Point{board.px(7.0F), 0.0F}, t.ink, board.px(2.2F));
}

/// The second sheet falls over the slit; without a dowel its hem hangs in waves.
void draw_second_face(Board& board, const PaperBox& hole, const mechanics::FlapDoor& door)
{
    const Theme& t = board.theme();
    const bool has_dowel = door.dowel > Mass{};
    const double hem = door.hem_height.si;
    const double inset = 0.05;
    std::vector<PaperPoint> outline{{hole.low.x + inset, hole.high.y}, {hole.high.x - inset, hole.high.y}};
    constexpr int pieces = 48;
    for (int i = 0; i <= pieces; ++i) {
        const double share = static_cast<double>(i) / pieces;
        const double wave = has_dowel ? 0.0 : 0.03 * std::sin(share * 6.0 * 6.283185307179586);
        outline.push_back({hole.high.x - inset - share * (hole.width() - 2.0 * inset), hem + wave});
    }
    board.canvas.fill(board.at(outline), faded(t.sheet, 0.55));
    draw_hatch(board, outline, board.px(13.0F), faded(t.tape, 0.55), board.px(1.0F), false);
    board.canvas.polyline(board.at(outline), t.tape, board.px(1.8F), true);
    draw_tape_strip(board, {{hole.low.x + 0.01, hole.high.y - tape_width * 0.5}, {hole.high.x - 0.01, hole.high.y + tape_width * 0.5}});
    if (!has_dowel) return;
    const Point a = board.at({hole.low.x + inset - 0.03, hem + 0.02});
    const Point b = board.at({hole.high.x - inset + 0.03, hem + 0.02});
    board.canvas.line(a, b, t.ink, board.px(7.0F));
    board.canvas.line(a, b, t.sheet, board.px(3.0F));
    for (const Point end : {a, b}) board.canvas.fill_circle(end, board.px(4.5F), t.ink);
}

}

void draw_flap_moment(Board& board, const mechanics::FlapDoor& door, const mechanics::SwingFrame* frame, bool goes_into_room, bool shows_person)
{
    const Theme& t = board.theme();
    const double height = door.height.si;
    draw_section_frame(board, flap_section_part.low.x, flap_section_part.high.x, height + 0.26);
    board.canvas.fill_box(board.view.at(PaperBox{{-frame_depth * 0.5, height}, {frame_depth * 0.5, height + 0.26}}), t.wall);
    for (const double side : {-0.5, 0.5}) // the jamb behind the cut
        board.canvas.line(board.at({side * frame_depth, 0.0}), board.at({side * frame_depth, height}), faded(t.wall, 0.35), board.px(1.0F));

    if (shows_person && frame != nullptr)
        draw_person_in_section(board, frame->passer.si, 1.72, goes_into_room, Outfit::suit_and_respirator);
    const bool has_torn = frame != nullptr && frame->has_torn_loose;
    if (door.is_taped) draw_still_film(board, door, has_torn, frame);
    const double slit_head = (door.slit_foot + door.slit_length).si;
    const std::vector<PaperPoint> first = frame != nullptr  ? paper_line(frame->first, 0.0)
                                          : door.is_taped ? straight(slit_head, door.slit_foot.si, 0.0)
                                                          : straight(height, 0.0, 0.0);
    std::vector<HungSheet> sheets{{first, false, !door.is_taped}};
    std::vector<PaperPoint> second;
    if (door.sheets >= 2) {
        second = frame != nullptr && !frame->second.empty() ? paper_line(frame->second, second_off)
                                                             : straight(height, door.hem_height.si, second_off);
        sheets.push_back({second, door.dowel > Mass{}, true});
    }
    draw_flap_section(board, sheets);
    draw_height_scale(board, flap_section_part.low.x + 0.02, height);
}

void draw_flap_face(Board& board, const site::FlapInHand& in_hand, const mechanics::FlapDoor& door, bool has_first, bool has_slit)
{
    const PaperBox hole{{0.0, 0.0}, {door.width.si, door.height.si}};
    draw_doorway_face(board, hole);
    const double middle = door.width.si * 0.5;
    if (has_first) {
        draw_sheeting(board, corners(PaperBox{{hole.low.x - 0.03, 0.0}, {hole.high.x + 0.03, hole.high.y + 0.03}}));
        if (door.has_folds)
            for (const double y : {0.05, 0.08, hole.high.y - 0.11, hole.high.y - 0.08})
                board.canvas.line(board.at({hole.low.x, y}), board.at({hole.high.x, y}), board.theme().ink, board.px(1.2F));
        if (door.is_taped) {
            draw_tape_strip(board, {{-0.05, 0.0}, {0.0, hole.high.y}});
            draw_tape_strip(board, {{hole.high.x, 0.0}, {hole.high.x + 0.05, hole.high.y}});
            draw_tape_strip(board, {{-0.05, hole.high.y}, {hole.high.x + 0.05, hole.high.y + 0.05}});
            draw_tape_strip(board, {{-0.05, 0.0}, {hole.high.x + 0.05, 0.045}});
        }
        else {
            draw_tape_strip(board, {{middle - 0.2, hole.high.y - 0.01}, {middle + 0.2, hole.high.y + 0.04}});
        }
        const double foot = has_slit ? door.slit_foot.si : in_hand.slit_foot.si;
        draw_slit(board, middle, foot, (door.slit_foot + door.slit_length).si, has_slit);
    }
    if (door.sheets < 2) return;
    draw_second_face(board, hole, door);
    if (has_slit && door.is_slit_through) draw_slit(board, middle, std::max(door.slit_foot.si, door.hem_height.si), (door.slit_foot + door.slit_length).si, true);
}

}
