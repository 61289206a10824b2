#include "plan/rect.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::plan {

Length distance(Point a, Point b)
{
    const double dx = a.x.si - b.x.si;
    const double dy = a.y.si - b.y.si;
    return {std::sqrt(dx * dx + dy * dy)};
}

Length distance(const Rect& rect, Point p)
{
    return distance(p, Point{std::clamp(p.x, rect.west, rect.east()), std::clamp(p.y, rect.south, rect.north())});
}

bool overlap(const Rect& a, const Rect& b)
{
    return a.west < b.east() && b.west < a.east() && a.south < b.north() && b.south < a.north();
}

Rect intersection(const Rect& a, const Rect& b)
{
    const Length west = std::max(a.west, b.west);
    const Length south = std::max(a.south, b.south);
    return {west, south, std::max(Length{}, std::min(a.east(), b.east()) - west), std::max(Length{}, std::min(a.north(), b.north()) - south)};
}

Rect grown(const Rect& rect, Length margin)
{
    return {rect.west - margin, rect.south - margin, std::max(Length{}, rect.width + margin * 2.0), std::max(Length{}, rect.depth + margin * 2.0)};
}

}
