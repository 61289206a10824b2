#include "window/drawing/fixtures.hpp"

#include "window/drawing/containment.hpp"
#include "window/widgets/words.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

/// A piece of furniture drawn on a unit square, y to its back, then turned and stretched onto its place.
struct Joinery {
    Board& board;
    PaperBox box;
    int turns;

    PaperPoint at(double u, double v) const
    {
        for (int i = 0; i < (turns & 3); ++i) {
            const double old = u;
            u = 1.0 - v;
            v = old;
        }
        return {box.low.x + u * box.width(), box.low.y + v * box.height()};
    }
    void outline(double u0, double v0, double u1, double v1, Color fill, float width = 1.2F) const
    {
        const std::vector<PaperPoint> p{at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)};
        board.canvas.fill_convex(board.at(p), fill);
        board.canvas.polyline(board.at(p), board.theme().ink, board.px(width), true);
    }
    void line(double u0, double v0, double u1, double v1, float width = 1.0F) const
    {
        board.canvas.line(board.at(at(u0, v0)), board.at(at(u1, v1)), faded(board.theme().ink, 0.75), board.px(width));
    }
};

void draw_bed(const Joinery& j)
{
    const Theme& t = j.board.theme();
    const double across = (j.turns & 1) != 0 ? j.box.height() : j.box.width();
    j.outline(0.0, 0.0, 1.0, 1.0, t.thing, 1.5F);
    if (across > 1.2) {
        j.outline(0.08, 0.78, 0.47, 0.95, t.field);
        j.outline(0.53, 0.78, 0.92, 0.95, t.field);
    }
    else {
        j.outline(0.15, 0.8, 0.85, 0.95, t.field);
    }
    j.line(0.0, 0.7, 1.0, 0.7);
    j.line(0.0, 0.62, 1.0, 0.62);
}

void draw_details(const Joinery& j, FurnitureKind kind)
{
    const Theme& t = j.board.theme();
    if (kind == FurnitureKind::bed) return draw_bed(j);
    j.outline(0.0, 0.0, 1.0, 1.0, t.thing, 1.5F);
    switch (kind) {
        case FurnitureKind::sofa:
            j.outline(0.0, 0.72, 1.0, 1.0, t.thing);
            j.outline(0.0, 0.0, 0.1, 1.0, t.thing);
            j.outline(0.9, 0.0, 1.0, 1.0, t.thing);
            j.line(0.5, 0.0, 0.5, 0.72);
            break;
        case FurnitureKind::chair:
            j.outline(0.0, 0.82, 1.0, 1.0, t.thing);
            break;
        case FurnitureKind::dresser:
            j.line(0.0, 0.14, 1.0, 0.14);
            for (const double u : {1.0 / 3.0, 2.0 / 3.0}) j.line(u, 0.0, u, 0.14);
            break;
        case FurnitureKind::shelf:
            j.line(0.0, 0.0, 1.0, 1.0);
            j.line(0.0, 1.0, 1.0, 0.0);
            break;
        case FurnitureKind::crib:
            j.outline(0.06, 0.06, 0.94, 0.94, t.field);
            for (int i = 1; i < 8; ++i) j.line(0.0, i / 8.0, 0.06, i / 8.0), j.line(0.94, i / 8.0, 1.0, i / 8.0);
            break;
        case FurnitureKind::counter:
            j.line(0.0, 0.12, 1.0, 0.12);
            break;
        case FurnitureKind::table:
            j.outline(0.06, 0.06, 0.94, 0.94, t.thing, 0.8F);
            break;
        default:
            break;
    }
}

}

void draw_register(Board& board, const PaperBox& box, RegisterKind kind, bool is_covered)
{
    const Theme& t = board.theme();
    const Box on_screen = board.view.at(box);
    board.canvas.fill_box(on_screen, t.field);
    const bool is_wide = on_screen.width() >= on_screen.height();
    const float length = is_wide ? on_screen.width() : on_screen.height();
    const int louvers = std::max(3, static_cast<int>(length / board.px(5.0F)));
    for (int i = 1; i < louvers; ++i) {
        const float at = static_cast<float>(i) / static_cast<float>(louvers);
        if (is_wide)
            board.canvas.line({on_screen.low.x + length * at, on_screen.low.y}, {on_screen.low.x + length * at, on_screen.high.y},
                              faded(t.ink, 0.7), board.px(1.0F));
        else
            board.canvas.line({on_screen.low.x, on_screen.low.y + length * at}, {on_screen.high.x, on_screen.low.y + length * at},
                              faded(t.ink, 0.7), board.px(1.0F));
    }
    if (kind == RegisterKind::extract) { // a second set of louvers across: it reads as a grid
        const Point c = on_screen.center();
        if (is_wide)
            board.canvas.line({on_screen.low.x, c.y}, {on_screen.high.x, c.y}, faded(t.ink, 0.7), board.px(1.0F));
        else
            board.canvas.line({c.x, on_screen.low.y}, {c.x, on_screen.high.y}, faded(t.ink, 0.7), board.px(1.0F));
    }
    board.canvas.frame_box(on_screen, t.ink, board.px(1.5F));
    if (is_covered) {
        const double edge = 0.05;
        const PaperBox cover{{box.low.x - edge, box.low.y - edge}, {box.high.x + edge, box.high.y + edge}};
        draw_sheeting(board, corners(cover));
        const std::vector<PaperPoint> c = corners(cover);
        for (std::size_t i = 0; i < c.size(); ++i) draw_tape(board, c[i], c[(i + 1) % c.size()]);
    }
}

void draw_furniture(Board& board, const PaperBox& box, FurnitureKind kind, std::string_view label, bool is_covered, int turns)
{
    draw_details(Joinery{board, box, turns}, kind);
    if (is_covered) draw_sheeting(board, corners(box));
    const Box on_screen = board.view.at(box);
    if (label.empty()) return;
    const Point words = board.canvas.measure(label, TextStyle::small);
    if (words.x + board.px(8.0F) > on_screen.width() || words.y > on_screen.height()) return;
    if (is_covered)
        draw_label(board.canvas, board.ui, on_screen.center(), label);
    else
        board.canvas.text(on_screen.center() - words * 0.5F, label, TextStyle::small, board.theme().ink);
}

void draw_radiator(Board& board, const PaperBox& box)
{
    const Theme& t = board.theme();
    const Box on_screen = board.view.at(box);
    const bool is_wide = on_screen.width() >= on_screen.height();
    const float length = is_wide ? on_screen.width() : on_screen.height();
    const int fins = std::max(3, static_cast<int>(length / board.px(9.0F)));
    const float pitch = length / static_cast<float>(fins);
    for (int i = 0; i < fins; ++i) {
        const float from = static_cast<float>(i) * pitch + pitch * 0.12F;
        const Box fin = is_wide ? box_at({on_screen.low.x + from, on_screen.low.y}, {pitch * 0.76F, on_screen.height()})
                                : box_at({on_screen.low.x, on_screen.low.y + from}, {on_screen.width(), pitch * 0.76F});
        board.canvas.fill_box(fin, t.field, board.px(2.0F));
        board.canvas.frame_box(fin, t.ink, board.px(1.1F), board.px(2.0F));
    }
}

}
