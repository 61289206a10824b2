#pragma once

#include "window/drawing/board.hpp"

#include <string_view>

namespace flapdoor::window {

enum class Outfit : int { own_clothes, suit, suit_and_respirator };

/// Somebody seen from above: shoulders and head, a nose for the way they face.
/// @param facing  radians, 0 to the east, counterclockwise
void draw_person(Board& board, PaperPoint at, double facing, Outfit outfit, std::string_view initials, bool is_chosen = false);

/// Of everybody, in a drawing.
inline constexpr double standing_height = 1.72;     ///< m

/// The same from the side, on an elevation: feet at height 0. @param faces_right  the way along the strip
void draw_person_in_section(Board& board, double x, double height, bool faces_right, Outfit outfit);

}
