#pragma once

#include "text/markup.hpp"

#include <string_view>
#include <vector>

/// Shapes for drawings inside a page. Coordinates in px, y downwards. Colors come by class from the page's style (page.hpp):
/// `ink`, `muted`, `accent`, `caution`, `line`, `faint`, or by attribute where data chooses them.
namespace flapdoor::text::svg {

struct Point {
    double x = 0.0, y = 0.0;
};

/// A drawing that scales with the page and tells its title and description to those who cannot see it.
Element drawing(double width, double height, std::string_view title, std::string_view description = {});

Element rect(double x, double y, double width, double height);      ///< negative sizes are drawn from the other end
Element line(Point from, Point to);
Element polyline(const std::vector<Point>& points);                 ///< open, not filled
Element polygon(const std::vector<Point>& points);
Element circle(Point center, double radius);
Element path(std::string_view commands);
Element group(std::string_view class_name = {});

enum class Anchor { start, middle, end };
Element label(Point at, std::string_view text, Anchor anchor = Anchor::start, double size = 13.0);

/// Width to keep free for a text in a sans-serif face, px: about right for wide faces, up to a quarter too much for
/// narrow ones.
double text_width(std::string_view text, double size = 13.0);

/// The text, cut and ended in U+2026 where it would be wider than the room.
std::string fitted(std::string_view text, double room, double size = 13.0);

}
