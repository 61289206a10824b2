#pragma once

#include "window/drawing/board.hpp"

#include <functional>
#include <span>
#include <string_view>

namespace flapdoor::window {

/// A strip cut upright through the rooms: x runs along the strip, y is the height above the floor, in meters. These
/// use the same Board as the plan.

/// Floor and ceiling lines with their hatch, from `from_x` to `to_x`.
void draw_section_frame(Board& board, double from_x, double to_x, double ceiling);

/// A wall that the section cuts through; `opening_top` above 0 leaves a doorway of that height.
void draw_section_wall(Board& board, double x, double thickness, double ceiling, double opening_top = 0.0);

/// What lies on one band of a wall's face.
struct WallBand {
    double low = 0.0; ///< m above the floor
    double high = 0.0;
    Color fill; ///< of its loading, from the dust ramp
    std::string_view note = {};
};
void draw_wall_bands(Board& board, double from_x, double to_x, std::span<const WallBand> bands);

/// A window in the wall's face, with casing, sash and sill.
void draw_window_face(Board& board, const PaperBox& glass, bool is_open);

/// A doorway in the wall's face.
void draw_door_face(Board& board, const PaperBox& frame);

/// One sheet of a flap door as it hangs in the section.
struct HungSheet {
    std::span<const PaperPoint> line; ///< from the top edge down, at least two points
    bool has_dowel = false;           ///< at its lower end
    bool is_taped_at_top = true;
};
void draw_flap_section(Board& board, std::span<const HungSheet> sheets);

/// Heights along the strip's left edge, in feet, every `every` feet.
void draw_height_scale(Board& board, double x, double ceiling, int every = 2);

}
