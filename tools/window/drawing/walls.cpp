#include "window/drawing/walls.hpp"

#include "core/quantity.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double leaf_thickness = 0.045; // m

/// @param hair  pixels more than the wall on both sides, to take its smooth edge along
void cut_hole(Board& board, const PlanOpening& opening, Color color, double hair)
{
    board.canvas.fill_convex(board.at(band(opening.from, opening.to, opening.thickness + 2.0 * hair / board.view.pixels_per_meter())),
                             color);
}

void draw_jambs(Board& board, const PlanOpening& opening)
{
    const PaperPoint side = left_of(along(opening.from, opening.to)) * (opening.thickness * 0.5);
    for (const PaperPoint jamb : {opening.from, opening.to})
        board.canvas.line(board.at(jamb - side), board.at(jamb + side), board.theme().wall, board.px(2.0F));
}

}

void draw_floor(Board& board, std::span<const PaperPoint> polygon, bool has_grid)
{
    if (polygon.size() < 3) return;
    board.canvas.fill(board.at(polygon), board.theme().floor);
    if (!has_grid || board.view.length(meters_per_foot) < 7.0F) return;

    // Each line of the grid is cut to the polygon like a hatch, but upright or level.
    PaperPoint low = polygon[0];
    PaperPoint high = polygon[0];
    for (const PaperPoint p : polygon) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    for (const bool is_upright : {true, false}) {
        const auto across = [&](PaperPoint p) { return is_upright ? p.x : p.y; };
        const auto up = [&](PaperPoint p) { return is_upright ? p.y : p.x; };
        for (double at = std::ceil(across(low) / meters_per_foot) * meters_per_foot; at < across(high); at += meters_per_foot) {
            std::vector<double> cuts;
            for (std::size_t i = 0; i < polygon.size(); ++i) {
                const PaperPoint a = polygon[i];
                const PaperPoint b = polygon[(i + 1) % polygon.size()];
                if ((across(a) <= at) != (across(b) <= at))
                    cuts.push_back(up(a) + (up(b) - up(a)) * (at - across(a)) / (across(b) - across(a)));
            }
            std::sort(cuts.begin(), cuts.end());
            const auto on_line = [&](double u) { return board.at(is_upright ? PaperPoint{at, u} : PaperPoint{u, at}); };
            for (std::size_t i = 0; i + 1 < cuts.size(); i += 2)
                board.canvas.line(on_line(cuts[i]), on_line(cuts[i + 1]), board.theme().grid, 1.0F);
        }
    }
}

void draw_walls(Board& board, std::span<const PlanWall> walls)
{
    for (const PlanWall& wall : walls)
        board.canvas.fill_convex(board.at(band(wall.from, wall.to, wall.thickness, wall.thickness * 0.5)), board.theme().wall);
}

void draw_door(Board& board, const PlanOpening& opening, const DoorLook& look)
{
    cut_hole(board, opening, board.theme().floor, 1.2);
    draw_jambs(board, opening);
    if (!look.has_leaf) return;

    const PaperPoint hinge = look.is_hinged_at_from ? opening.from : opening.to;
    const PaperPoint latch = look.is_hinged_at_from ? opening.to : opening.from;
    const double width = distance(hinge, latch);
    const PaperPoint shut = along(hinge, latch);
    const PaperPoint open = left_of(along(opening.from, opening.to)) * (look.swings_left ? 1.0 : -1.0);
    const PaperPoint start = hinge + open * (opening.thickness * 0.5 - leaf_thickness * 0.5);
    const auto tip = [&](double share) {
        const double angle = share * 1.5707963267948966;
        return start + (shut * std::cos(angle) + open * std::sin(angle)) * width;
    };
    std::vector<PaperPoint> swing;
    for (int i = 0; i <= 24; ++i) swing.push_back(tip(i / 24.0));
    board.canvas.polyline(board.at(swing), faded(board.theme().ink, 0.55), board.px(1.0F));
    const std::vector<Point> leaf = board.at(band(start, tip(std::clamp(look.open_share, 0.0, 1.0)), leaf_thickness));
    board.canvas.fill_convex(leaf, board.theme().sheet);
    board.canvas.polyline(leaf, board.theme().ink, board.px(1.5F), true);
}

void draw_window(Board& board, const PlanOpening& opening, const WindowLook& look)
{
    const Theme& t = board.theme();
    const PaperPoint left = left_of(along(opening.from, opening.to));
    if (look.sill_depth > 0.0) {
        const PaperPoint out = left * (opening.thickness * 0.5 + look.sill_depth * 0.5);
        const std::vector<Point> sill = board.at(band(opening.from + out, opening.to + out, look.sill_depth, 0.04));
        board.canvas.fill_convex(sill, t.thing);
        board.canvas.polyline(sill, t.ink, board.px(1.0F), true);
    }
    cut_hole(board, opening, look.is_open ? t.floor : t.glass, 0.0);
    draw_jambs(board, opening);
    for (const double at : {-0.5, 0.0, 0.5}) {
        const PaperPoint shift = left * (opening.thickness * at);
        const bool is_sash = at == 0.0;
        const PaperPoint middle = (opening.from + opening.to) * 0.5;
        const PaperPoint end = is_sash && look.is_open ? middle : opening.to;
        board.canvas.line(board.at(opening.from + shift), board.at(end + shift), t.ink, board.px(is_sash ? 1.8F : 1.2F));
    }
}

void draw_room_name(Board& board, PaperPoint center, std::string_view name)
{
    const Point size = board.canvas.measure(name, TextStyle::small);
    board.canvas.fill_box(box_around(board.at(center), size + Point{board.px(10.0F), board.px(2.0F)}), faded(board.theme().floor, 0.8),
                          board.px(3.0F));
    board.canvas.text(board.at(center) - size * 0.5F, name, TextStyle::small, board.theme().muted);
}

}
