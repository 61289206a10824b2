#pragma once

#include "core/quantity.hpp"

namespace flapdoor::plan {

/// A place on the plan: x to the east, y to the north.
struct Point {
    Length x{}, y{};
    friend constexpr auto operator<=>(Point, Point) = default;
};

Length distance(Point a, Point b);

/// An upright rectangle on the plan; edges belong to it. Width and depth are never negative.
struct Rect {
    Length west{}, south{}, width{}, depth{};

    constexpr Length east() const { return west + width; }
    constexpr Length north() const { return south + depth; }
    constexpr Area area() const { return width * depth; }
    constexpr Point center() const { return {west + width * 0.5, south + depth * 0.5}; }
    constexpr bool contains(Point p) const { return p.x >= west && p.x <= east() && p.y >= south && p.y <= north(); }
    /// Is all of `inner` inside, up to `slack` beyond each edge?
    constexpr bool contains(const Rect& inner, Length slack = {}) const
    {
        return inner.west >= west - slack && inner.east() <= east() + slack && inner.south >= south - slack && inner.north() <= north() + slack;
    }
    friend constexpr auto operator<=>(const Rect&, const Rect&) = default;
};

/// Shortest way from a point to a rectangle; 0 inside.
Length distance(const Rect& rect, Point p);

/// Do they share more than an edge?
bool overlap(const Rect& a, const Rect& b);

/// The common part; width or depth 0 when there is none.
Rect intersection(const Rect& a, const Rect& b);

/// Grown by `margin` on every side; a negative margin shrinks it, at most to nothing.
Rect grown(const Rect& rect, Length margin);

}
