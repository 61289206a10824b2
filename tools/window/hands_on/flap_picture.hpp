#pragma once

#include "window/drawing/board.hpp"

#include "mechanics/swing_film.hpp"
#include "site/flap_moves.hpp"

namespace flapdoor::window {

/// The doorway cut upright across the way through: x = 0 in the frame, the work room at positive x.
inline constexpr PaperBox flap_section_part{{-1.15, -0.06}, {1.35, 2.36}};

/// The sheets at one moment of a passage, whoever passes, and tape where it holds.
/// @param frame  null: nobody passes, sheets hang straight
void draw_flap_moment(Board& board, const mechanics::FlapDoor& door, const mechanics::SwingFrame* frame, bool goes_into_room, bool shows_person);

/// The doorway from the work side, as far as the flap door in it is made. x runs across the doorway from 0 to its width.
void draw_flap_face(Board& board, const site::FlapInHand& in_hand, const mechanics::FlapDoor& door, bool has_first, bool has_slit);

}
