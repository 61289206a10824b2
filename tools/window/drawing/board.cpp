#include "window/drawing/board.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

std::vector<PaperPoint> corners(const PaperBox& box) { return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}; }

std::vector<PaperPoint> band(PaperPoint from, PaperPoint to, double thickness, double overhang)
{
    const PaperPoint dir = along(from, to);
    const PaperPoint side = left_of(dir) * (thickness * 0.5);
    const PaperPoint a = from - dir * overhang;
    const PaperPoint b = to + dir * overhang;
    return {a - side, b - side, b + side, a + side};
}

void draw_hatch(Board& board, std::span<const PaperPoint> polygon, float spacing, Color color, float width, bool leans_right)
{
    const std::vector<Point> points = board.at(polygon);
    if (points.size() < 3 || spacing < 1.0F) return;
    const float sign = leans_right ? 1.0F : -1.0F;
    const Point origin = board.at(PaperPoint{0.0, 0.0});
    const auto level = [&](Point p) { return (p.x - origin.x) + sign * (p.y - origin.y); }; // constant along a hatch line
    const float step = spacing * std::sqrt(2.0F);
    float low = level(points[0]);
    float high = low;
    for (const Point p : points) {
        low = std::min(low, level(p));
        high = std::max(high, level(p));
    }
    std::vector<float> cuts;
    for (float at = std::ceil(low / step) * step; at < high; at += step) {
        cuts.clear();
        for (std::size_t i = 0; i < points.size(); ++i) {
            const Point a = points[i];
            const Point b = points[(i + 1) % points.size()];
            const float la = level(a);
            const float lb = level(b);
            if ((la <= at) == (lb <= at)) continue;
            cuts.push_back(a.x + (b.x - a.x) * (at - la) / (lb - la));
        }
        std::sort(cuts.begin(), cuts.end());
        const auto on_line = [&](float x) { return Point{x, origin.y + sign * (at - (x - origin.x))}; };
        for (std::size_t i = 0; i + 1 < cuts.size(); i += 2) board.canvas.line(on_line(cuts[i]), on_line(cuts[i + 1]), color, width);
    }
}

}
