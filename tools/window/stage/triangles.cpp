#include "window/stage/triangles.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::window {

namespace {

double turn(Point a, Point b, Point c)
{
    return static_cast<double>(b.x - a.x) * static_cast<double>(c.y - a.y) -
           static_cast<double>(b.y - a.y) * static_cast<double>(c.x - a.x);
}

bool holds(Point a, Point b, Point c, Point p) { return turn(a, b, p) >= 0.0 && turn(b, c, p) >= 0.0 && turn(c, a, p) >= 0.0; }

}

double signed_area(std::span<const Point> polygon)
{
    double twice = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i];
        const Point b = polygon[(i + 1) % polygon.size()];
        twice += static_cast<double>(a.x) * static_cast<double>(b.y) - static_cast<double>(b.x) * static_cast<double>(a.y);
    }
    return twice / 2.0;
}

std::vector<std::array<std::size_t, 3>> triangles(std::span<const Point> polygon)
{
    std::vector<std::size_t> left(polygon.size());
    std::iota(left.begin(), left.end(), std::size_t{0});
    if (signed_area(polygon) < 0.0) std::reverse(left.begin(), left.end());

    const auto is_ear = [&](std::size_t i) {
        const std::size_t a = left[(i + left.size() - 1) % left.size()];
        const std::size_t b = left[i];
        const std::size_t c = left[(i + 1) % left.size()];
        if (turn(polygon[a], polygon[b], polygon[c]) < 0.0) return false;
        return std::none_of(left.begin(), left.end(), [&](std::size_t p) {
            const bool is_corner = polygon[p] == polygon[a] || polygon[p] == polygon[b] || polygon[p] == polygon[c];
            return !is_corner && holds(polygon[a], polygon[b], polygon[c], polygon[p]);
        });
    };

    std::vector<std::array<std::size_t, 3>> cut;
    while (left.size() >= 3) {
        std::size_t ear = 0;
        while (ear < left.size() && !is_ear(ear)) ++ear;
        if (ear == left.size()) break;
        cut.push_back({left[(ear + left.size() - 1) % left.size()], left[ear], left[(ear + 1) % left.size()]});
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(ear));
    }
    return cut;
}

}
