#include "window/drawing/containment.hpp"

#include "window/widgets/words.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

std::vector<PaperPoint> wave(PaperPoint from, PaperPoint to, double height, int folds)
{
    const PaperPoint side = left_of(along(from, to));
    std::vector<PaperPoint> points;
    const int steps = folds * 12;
    for (int i = 0; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        points.push_back(from + (to - from) * share + side * (height * std::sin(share * folds * 6.283185307179586)));
    }
    return points;
}

}

void draw_sheeting(Board& board, std::span<const PaperPoint> polygon)
{
    const Theme& t = board.theme();
    const std::vector<Point> outline = board.at(polygon);
    board.canvas.fill(outline, faded(t.sheet, 0.12));
    // A pale line beside each dark one, so that the hatch reads on a clean floor and over dust alike.
    draw_hatch(board, polygon, board.px(10.0F), faded(t.sheet, 0.26), board.px(2.4F));
    draw_hatch(board, polygon, board.px(10.0F), faded(t.sheeting, 0.85), board.px(1.0F));
    board.canvas.polyline(outline, t.sheeting, board.px(1.3F), true);
}

void draw_tape(Board& board, PaperPoint from, PaperPoint to)
{
    const Point a = board.at(from);
    const Point b = board.at(to);
    const float length = std::hypot(b.x - a.x, b.y - a.y);
    if (length < 1.0F) return;
    const float width = std::max(board.px(6.0F), board.view.length(0.048)); // two-inch tape
    board.canvas.line(a, b, board.theme().tape, width);
    board.canvas.line(a, b, board.theme().sheet, width - board.px(3.0F)); // pale inside a dark edge: it reads on any ground
    const Point dir = (b - a) * (1.0F / length);
    const Point side = Point{-dir.y, dir.x} * (width * 0.5F);
    const float pitch = board.px(14.0F);
    for (float at = pitch * 0.5F; at < length; at += pitch) {
        const Point p = a + dir * at;
        board.canvas.line(p - side, p + side, board.theme().tape, board.px(1.2F));
    }
}

void draw_flap_door(Board& board, PaperPoint from, PaperPoint to, const FlapDoorLook& look)
{
    const Theme& t = board.theme();
    const PaperPoint side = left_of(along(from, to));
    const PaperPoint a = from + side * 0.05;
    const PaperPoint b = to + side * 0.05;
    if (!look.is_hung) return board.canvas.dashes(board.at(a), board.at(b), t.tape, board.px(1.5F), board.px(5.0F), board.px(4.0F));

    // First sheet: taped round the frame, slit in the middle. Second: a curtain hung from the top only.
    const auto stroke = [&](std::span<const PaperPoint> line, float width) { // cased, to read over dust
        const std::vector<Point> points = board.at(line);
        board.canvas.polyline(points, t.sheet, board.px(width + 3.0F));
        board.canvas.polyline(points, t.tape, board.px(width));
    };
    const PaperPoint slit_low = a + (b - a) * 0.44;
    const PaperPoint slit_high = a + (b - a) * 0.56;
    const PaperPoint hang = side * 0.13;
    stroke(wave(a + hang, b + hang, 0.025, 5), 2.0F);
    stroke(std::vector<PaperPoint>{a, slit_low, slit_low + side * 0.07 + (b - a) * 0.05}, 2.2F);
    stroke(std::vector<PaperPoint>{b, slit_high, slit_high + side * 0.07 - (b - a) * 0.05}, 2.2F);
    if (look.is_first_sheet_taped)
        for (const PaperPoint end : {a, b})
            board.canvas.fill_box(box_around(board.at(end), {board.px(8.0F), board.px(8.0F)}), t.tape, board.px(1.5F));
    if (look.has_dowel) {
        const Point low = board.at(a + hang + (b - a) * 0.06 + side * 0.06);
        const Point high = board.at(b + hang - (b - a) * 0.06 + side * 0.06);
        board.canvas.line(low, high, t.ink, board.px(3.0F));
        board.canvas.fill_circle(low, board.px(2.4F), t.ink);
        board.canvas.fill_circle(high, board.px(2.4F), t.ink);
    }
}

void draw_tack_pad(Board& board, const PaperBox& box, double filled)
{
    const Theme& t = board.theme();
    const Box on_screen = board.view.at(box);
    board.canvas.fill_box(on_screen, mixed(t.field, t.caution_fill, std::clamp(filled, 0.0, 1.0) * 0.6), board.px(2.0F));
    const float pitch = board.px(7.0F);
    for (float y = on_screen.low.y + pitch * 0.6F; y < on_screen.high.y - 1.0F; y += pitch)
        for (float x = on_screen.low.x + pitch * 0.6F; x < on_screen.high.x - 1.0F; x += pitch)
            board.canvas.fill_circle({x, y}, board.px(1.1F), faded(t.ink, 0.75));
    board.canvas.frame_box(on_screen, t.ink, board.px(1.4F), board.px(2.0F));
    if (filled >= 1.0) board.canvas.line(on_screen.low, on_screen.high, t.caution, board.px(2.0F));
}

void draw_bag(Board& board, PaperPoint center, BagState state, double size_m)
{
    const Theme& t = board.theme();
    const Point c = board.at(center);
    const float r = std::max(board.view.length(size_m * 0.5), board.px(8.0F));
    std::vector<Point> body;
    for (int i = 0; i < 40; ++i) { // a sagging sack: round, with dents
        const float angle = static_cast<float>(i) / 40.0F * 6.2831853F;
        const float dent = 1.0F + 0.06F * std::cos(5.0F * angle + 0.7F);
        body.push_back({c.x + r * dent * std::cos(angle), c.y + r * 0.92F * dent * std::sin(angle)});
    }
    board.canvas.fill(body, state == BagState::open ? t.thing : mixed(t.ink, t.sheet, 0.35));
    board.canvas.polyline(body, t.ink, board.px(1.4F), true);
    if (state == BagState::open) return board.canvas.ring(c, r * 0.62F, t.ink, board.px(1.2F));

    for (int i = 0; i < 6; ++i) { // folds that run to the neck
        const float angle = static_cast<float>(i) / 6.0F * 6.2831853F + 0.3F;
        const Point dir{std::cos(angle), std::sin(angle)};
        board.canvas.line(c + dir * (r * 0.3F), c + dir * (r * 0.7F), faded(t.sheet, 0.7), board.px(1.0F));
    }
    board.canvas.fill_circle(c, r * 0.26F, t.sheet);
    board.canvas.ring(c, r * 0.26F, t.ink, board.px(1.3F));
    if (state == BagState::taped) board.canvas.ring(c, r * 0.34F, t.tape, board.px(2.6F));
}

void draw_sign(Board& board, PaperPoint at)
{
    const Theme& t = board.theme();
    const Point c = board.at(at);
    const float h = board.px(10.0F);
    const Point corners[4] = {{c.x, c.y - h}, {c.x + h, c.y}, {c.x, c.y + h}, {c.x - h, c.y}};
    board.canvas.fill_convex(corners, t.caution_fill);
    board.canvas.polyline(corners, t.ink, board.px(1.4F), true);
    board.canvas.line({c.x, c.y - h * 0.5F}, {c.x, c.y + h * 0.12F}, t.ink, board.px(2.0F));
    board.canvas.fill_circle({c.x, c.y + h * 0.45F}, board.px(1.4F), t.ink);
}

void draw_barrier(Board& board, std::span<const PaperPoint> line)
{
    const Theme& t = board.theme();
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        board.canvas.line(board.at(line[i]), board.at(line[i + 1]), t.caution_fill, board.px(4.0F));
        board.canvas.dashes(board.at(line[i]), board.at(line[i + 1]), t.ink, board.px(4.0F), board.px(7.0F), board.px(9.0F));
    }
    for (const PaperPoint post : line) {
        board.canvas.fill_circle(board.at(post), board.px(5.0F), t.sheet);
        board.canvas.ring(board.at(post), board.px(5.0F), t.ink, board.px(1.5F));
    }
}

void draw_work_area(Board& board, std::span<const PaperPoint> polygon, std::string_view label)
{
    if (polygon.size() < 3) return;
    const Theme& t = board.theme();
    PaperPoint top = polygon[0];
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        board.canvas.dashes(board.at(polygon[i]), board.at(polygon[(i + 1) % polygon.size()]), t.caution, board.px(2.0F), board.px(12.0F),
                            board.px(5.0F));
        if (polygon[i].y > top.y || (polygon[i].y == top.y && polygon[i].x < top.x)) top = polygon[i];
    }
    if (label.empty()) return;
    const Point words = board.canvas.measure(label, TextStyle::small);
    draw_label(board.canvas, board.ui, board.at(top) + Point{words.x * 0.5F + board.px(14.0F), 0.0F}, label);
}

}
