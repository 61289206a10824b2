#pragma once

#include "window/drawing/board.hpp"

#include <string_view>

namespace flapdoor::window {

enum class RegisterKind : int { supply, extract }; ///< extract: takes room air back to the air handler

/// A floor or wall register: frame, louvers and the way the air goes; its cover, when it has one.
void draw_register(Board& board, const PaperBox& box, RegisterKind kind, bool is_covered);

enum class FurnitureKind : int { plain, bed, sofa, table, chair, dresser, shelf, crib, counter };

/// Seen from above; the head of a bed and the back of a sofa lie to the north unless `turns` says otherwise.
/// @param turns  quarter turns counterclockwise
void draw_furniture(Board& board, const PaperBox& box, FurnitureKind kind, std::string_view label, bool is_covered, int turns = 0);

void draw_radiator(Board& board, const PaperBox& box);

}
