#pragma once

#include <algorithm>

namespace flapdoor::window {

/// A place on the screen, in pixels from the top left corner, y downwards.
struct Point {
    float x = 0.0F;
    float y = 0.0F;

    friend constexpr bool operator==(Point, Point) = default;
    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point operator*(Point a, float k) { return {a.x * k, a.y * k}; }
};

/// An upright rectangle on the screen.
struct Box {
    Point low;  ///< top left
    Point high; ///< bottom right

    friend constexpr bool operator==(const Box&, const Box&) = default;
    constexpr float width() const { return high.x - low.x; }
    constexpr float height() const { return high.y - low.y; }
    constexpr Point size() const { return high - low; }
    constexpr Point center() const { return (low + high) * 0.5F; }
    constexpr bool contains(Point p) const { return p.x >= low.x && p.x < high.x && p.y >= low.y && p.y < high.y; }
    constexpr bool contains(const Box& b) const { return b.low.x >= low.x && b.low.y >= low.y && b.high.x <= high.x && b.high.y <= high.y; }
    constexpr bool overlaps(const Box& b) const { return low.x < b.high.x && b.low.x < high.x && low.y < b.high.y && b.low.y < high.y; }
    constexpr Box inset(float by) const { return {{low.x + by, low.y + by}, {high.x - by, high.y - by}}; }
    constexpr Box moved(Point by) const { return {low + by, high + by}; }
};

constexpr Box box_at(Point low, Point size) { return {low, low + size}; }
constexpr Box box_around(Point center, Point size) { return {center - size * 0.5F, center + size * 0.5F}; }

/// Cuts a strip off `rest` and returns it, never more than there is. Screens are laid out by a row of such cuts.
constexpr Box cut_top(Box& rest, float height)
{
    const float edge = std::min(rest.low.y + height, rest.high.y);
    const Box cut{rest.low, {rest.high.x, edge}};
    rest.low.y = edge;
    return cut;
}

constexpr Box cut_bottom(Box& rest, float height)
{
    const float edge = std::max(rest.high.y - height, rest.low.y);
    const Box cut{{rest.low.x, edge}, rest.high};
    rest.high.y = edge;
    return cut;
}

constexpr Box cut_left(Box& rest, float width)
{
    const float edge = std::min(rest.low.x + width, rest.high.x);
    const Box cut{rest.low, {edge, rest.high.y}};
    rest.low.x = edge;
    return cut;
}

constexpr Box cut_right(Box& rest, float width)
{
    const float edge = std::max(rest.high.x - width, rest.low.x);
    const Box cut{{edge, rest.low.y}, rest.high};
    rest.high.x = edge;
    return cut;
}

}
