#pragma once

#include "window/drawing/board.hpp"

#include <span>
#include <string_view>

namespace flapdoor::window {

/// Plastic sheeting laid out: a light slanted hatch, so that what lies below still shows.
void draw_sheeting(Board& board, std::span<const PaperPoint> polygon);

/// A taped edge: a narrow band with cross ticks.
void draw_tape(Board& board, PaperPoint from, PaperPoint to);

/// The two sheets of a flap door across an opening, seen from above.
/// @param is_hung  false shows only the outline where it belongs
struct FlapDoorLook {
    bool is_hung = true;
    bool has_dowel = true;
    bool is_first_sheet_taped = true;
};
void draw_flap_door(Board& board, PaperPoint from, PaperPoint to, const FlapDoorLook& look = {});

/// @param filled  0 fresh, 1 saturated
void draw_tack_pad(Board& board, const PaperBox& box, double filled);

enum class BagState : int { open, gooseneck, taped }; ///< mouth open; twisted and folded over; taped shut
void draw_bag(Board& board, PaperPoint center, BagState state, double size_m = 0.5);

/// A warning sign on a wall or stand, with the way it faces.
void draw_sign(Board& board, PaperPoint at);

/// A rope or tape that keeps people out.
void draw_barrier(Board& board, std::span<const PaperPoint> line);

/// Edge of the work area, with its name.
void draw_work_area(Board& board, std::span<const PaperPoint> polygon, std::string_view label);

}
