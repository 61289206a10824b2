#include "window/drawing/elevation.hpp"

#include "core/quantity.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

void draw_section_frame(Board& board, double from_x, double to_x, double ceiling)
{
    const Theme& t = board.theme();
    const PaperBox air{{from_x, 0.0}, {to_x, ceiling}};
    board.canvas.fill_box(board.view.at(air), t.floor);
    const double slab = 10.0 / board.view.pixels_per_meter() * static_cast<double>(board.ui.text_scale());
    for (const double y : {0.0, ceiling}) {
        const double outer = y == 0.0 ? -slab : ceiling + slab;
        const PaperBox strip{{from_x, std::min(y, outer)}, {to_x, std::max(y, outer)}};
        draw_hatch(board, corners(strip), board.px(6.0F), faded(t.wall, 0.45), board.px(1.0F));
        board.canvas.line(board.at({from_x, y}), board.at({to_x, y}), t.wall, board.px(2.4F));
    }
}

void draw_section_wall(Board& board, double x, double thickness, double ceiling, double opening_top)
{
    const Theme& t = board.theme();
    const Box box = board.view.at(PaperBox{{x - thickness * 0.5, opening_top}, {x + thickness * 0.5, ceiling}});
    board.canvas.fill_box(box, t.wall);
    if (opening_top > 0.0)
        for (const double side : {-0.5, 0.5})
            board.canvas.line(board.at({x + side * thickness, 0.0}), board.at({x + side * thickness, opening_top}), faded(t.wall, 0.5),
                              board.px(1.0F));
}

void draw_wall_bands(Board& board, double from_x, double to_x, std::span<const WallBand> bands)
{
    const Theme& t = board.theme();
    for (const WallBand& band : bands) {
        const Box box = board.view.at(PaperBox{{from_x, band.low}, {to_x, band.high}});
        board.canvas.fill_box(box, band.fill);
        board.canvas.line({box.low.x, box.low.y}, {box.high.x, box.low.y}, faded(t.ink, 0.18), 1.0F);
        if (band.note.empty()) continue;
        const Point words = board.canvas.measure(band.note, TextStyle::small);
        if (words.y > box.height() || words.x + board.px(12.0F) > box.width()) continue;
        const Color seen = laid_over(band.fill, t.floor);
        board.canvas.text_in({{box.low.x + board.px(6.0F), box.low.y}, box.high}, band.note, TextStyle::small,
                             contrast(t.ink, seen) >= 4.5 ? t.ink : t.field);
    }
}

void draw_window_face(Board& board, const PaperBox& glass, bool is_open)
{
    const Theme& t = board.theme();
    const double casing = 0.09;
    const PaperBox frame{{glass.low.x - casing, glass.low.y}, {glass.high.x + casing, glass.high.y + casing}};
    board.canvas.fill_box(board.view.at(frame), t.sheet);
    board.canvas.frame_box(board.view.at(frame), t.ink, board.px(1.3F));
    const double middle = (glass.low.y + glass.high.y) * 0.5;
    const PaperBox upper{{glass.low.x, middle}, glass.high};
    const PaperBox lower{glass.low, {glass.high.x, middle}};
    const PaperBox sash =
        is_open ? PaperBox{{lower.low.x, lower.low.y + lower.height() * 0.7}, {lower.high.x, lower.high.y + lower.height() * 0.7}} : lower;
    board.canvas.fill_box(board.view.at(lower), is_open ? mixed(t.glass, t.field, 0.7) : t.glass);
    for (const PaperBox& pane : {upper, sash}) {
        const Box box = board.view.at(pane);
        board.canvas.fill_box(box, t.glass);
        board.canvas.frame_box(box, t.ink, board.px(2.0F));
        const Point c = box.center();
        board.canvas.line({c.x - box.width() * 0.12F, c.y + box.height() * 0.10F}, {c.x + box.width() * 0.06F, c.y - box.height() * 0.16F},
                          faded(t.ink, 0.35), board.px(1.0F));
        board.canvas.line({c.x - box.width() * 0.02F, c.y + box.height() * 0.14F}, {c.x + box.width() * 0.12F, c.y - box.height() * 0.06F},
                          faded(t.ink, 0.35), board.px(1.0F));
    }
    const Box sill = board.view.at(PaperBox{{frame.low.x - 0.05, glass.low.y - 0.05}, {frame.high.x + 0.05, glass.low.y}});
    board.canvas.fill_box(sill, t.thing);
    board.canvas.frame_box(sill, t.ink, board.px(1.4F));
    const Box apron = board.view.at(PaperBox{{frame.low.x, glass.low.y - 0.13}, {frame.high.x, glass.low.y - 0.05}});
    board.canvas.frame_box(apron, t.ink, board.px(1.0F));
}

void draw_door_face(Board& board, const PaperBox& frame)
{
    const Theme& t = board.theme();
    const Box outer = board.view.at(PaperBox{{frame.low.x - 0.09, 0.0}, {frame.high.x + 0.09, frame.high.y + 0.09}});
    const Box inner = board.view.at(frame);
    board.canvas.fill_box(outer, t.sheet);
    board.canvas.frame_box(outer, t.ink, board.px(1.2F));
    board.canvas.fill_box(inner, mixed(t.floor, t.wall, 0.12));
    board.canvas.frame_box(inner, t.ink, board.px(1.2F));
}

void draw_flap_section(Board& board, std::span<const HungSheet> sheets)
{
    const Theme& t = board.theme();
    for (const HungSheet& sheet : sheets) {
        if (sheet.line.size() < 2) continue;
        const std::vector<Point> line = board.at(sheet.line);
        board.canvas.polyline(line, faded(t.tape, 0.25), board.px(5.0F)); // the sheet catches the light
        board.canvas.polyline(line, t.tape, board.px(2.0F));
        if (sheet.is_taped_at_top)
            board.canvas.fill_box(box_around(line.front(), {board.px(10.0F), board.px(7.0F)}), t.tape, board.px(1.0F));
        if (sheet.has_dowel) {
            board.canvas.fill_circle(line.back(), board.px(5.5F), t.sheet);
            board.canvas.ring(line.back(), board.px(5.5F), t.ink, board.px(1.6F));
            board.canvas.fill_circle(line.back(), board.px(1.6F), t.ink);
        }
    }
}

void draw_height_scale(Board& board, double x, double ceiling, int every)
{
    const Theme& t = board.theme();
    for (int feet = 0; feet * meters_per_foot <= ceiling + 1e-6; feet += std::max(every, 1)) {
        const Point at = board.at({x, feet * meters_per_foot});
        board.canvas.line({at.x - board.px(5.0F), at.y}, at, t.muted, board.px(1.0F));
        const std::string text = fmt::format("{}'", feet);
        const Point size = board.canvas.measure(text, TextStyle::small);
        board.canvas.text({at.x - board.px(8.0F) - size.x, at.y - size.y * 0.5F}, text, TextStyle::small, t.muted);
    }
}

}
