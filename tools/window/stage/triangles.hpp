#pragma once

#include "window/base/geometry.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace flapdoor::window {

/// Positive for points that run clockwise on the screen (y downwards).
double signed_area(std::span<const Point> polygon);

/// Cuts a polygon that does not cross itself into triangles, named by the places of their corners in it. A polygon that
/// cannot be cut up further (it does cross itself) yields what was cut so far.
/// Method: ear clipping, O(n2); plans have tens of corners.
std::vector<std::array<std::size_t, 3>> triangles(std::span<const Point> polygon);

}
