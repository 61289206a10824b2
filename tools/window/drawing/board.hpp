#pragma once

#include "window/drawing/paper.hpp"
#include "window/stage/ui.hpp"

#include <span>
#include <vector>

namespace flapdoor::window {

/// Where a drawing is made: a canvas, the part of the paper it shows, and the look. Line widths are pixels at 100 % and
/// do not grow with the zoom, as on a drawing that is plotted at another scale.
struct Board {
    Canvas canvas;
    PaperView view;
    const Ui& ui;

    const Theme& theme() const { return ui.theme(); }
    float px(float at_100_percent) const { return ui.px(at_100_percent); }
    Point at(PaperPoint p) const { return view.at(p); }
    std::vector<Point> at(std::span<const PaperPoint> points) const
    {
        std::vector<Point> out;
        out.reserve(points.size());
        for (const PaperPoint p : points) out.push_back(view.at(p));
        return out;
    }
};

std::vector<PaperPoint> corners(const PaperBox& box);

/// The four corners of a band of `thickness` about the line from `from` to `to`, longer by `overhang` at both ends.
std::vector<PaperPoint> band(PaperPoint from, PaperPoint to, double thickness, double overhang = 0.0);

/// Slanted parallel lines inside a polygon (even-odd), in step with the paper so that they do not swim while panning.
/// @param spacing  pixels between lines, measured across them
void draw_hatch(Board& board, std::span<const PaperPoint> polygon, float spacing, Color color, float width, bool leans_right = true);

}
