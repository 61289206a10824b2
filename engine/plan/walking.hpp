#pragma once

#include "plan/raster.hpp"

#include <vector>

namespace flapdoor::plan {

/// Shortest way over free cells, steps to the eight neighbors, never cutting a blocked corner. Both ends included.
/// A blocked end is replaced by the free cell nearest to it.
/// @param is_blocked  one flag per cell of the raster
/// @return            cells in walking order; empty when there is no way
std::vector<std::size_t> walk(const Raster& raster, const std::vector<bool>& is_blocked, Point from, Point to);

/// Points along a cell path, one every `stride`, first and last included.
std::vector<Point> footsteps(const Raster& raster, const std::vector<std::size_t>& path, Length stride);

/// The free cells in strips across the room, back and forth, from the end far from `exit` toward it.
std::vector<std::size_t> strips_toward(const Raster& raster, const std::vector<bool>& is_blocked, Point exit);

}
