#pragma once

#include "window/drawing/board.hpp"

#include "plan/raster.hpp"

#include <cstdint>
#include <span>

namespace flapdoor::window {

/// Plastic laid on the marked cells: hatched all over, with an edge where it ends.
/// @param marked  [cell], not 0 where it lies
void draw_sheeted_cells(Board& board, const plan::Raster& raster, std::span<const std::uint8_t> marked);

}
