#pragma once

#include "window/drawing/board.hpp"

#include <string>

namespace flapdoor::window {

/// Feet and inches as on a drawing, to the nearest inch: `12' 6"`.
std::string feet_text(double meters);

/// A dimension line beside two points, with slashed ends and its length in feet.
/// @param offset  meters from the points, to the left of the way from `from` to `to`; may be negative
/// @return  what its figure covers on the screen, of lines along an axis; an empty box when it has none
Box draw_dimension(Board& board, PaperPoint from, PaperPoint to, double offset);

/// A bar of alternating fields with its feet, as long as fits in about `room` pixels.
void draw_scale_bar(Board& board, Point low, float room);

}
