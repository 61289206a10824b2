#pragma once

#include "window/base/picture.hpp"
#include "window/drawing/paper.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace flapdoor::window {

/// Color of a share of the dust scale, 0 (none) to 1 (most).
using Ramp = std::function<Color(double share)>;

/// The one ramp of the program, the same on the screen and on printed pages: text::dust_color.
Color dust_ramp(double share);

/// Lead lying on the floor of a plan, cell by cell.
struct HeatGrid {
    int columns = 0;
    int rows = 0;
    PaperPoint low;                       ///< south-west corner of the grid
    double cell = 0.1;                    ///< side of a cell, m
    std::vector<float> loading = {};      ///< [row][column], row 0 in the south; ug/ft2, never negative
    std::vector<std::uint16_t> room = {}; ///< the same order; 0 is no floor (wall, outdoors), others tell rooms apart

    PaperBox box() const { return {low, {low.x + columns * cell, low.y + rows * cell}}; }
};

/// Loadings by their logarithm: from `least` (share 0) to `most` (share 1).
struct HeatScale {
    double least = 1.0;    ///< ug/ft2, above 0
    double most = 10000.0; ///< ug/ft2, above `least`

    double share(double loading) const; ///< clamped to 0..1; 0 for nothing
    double loading(double share) const;
};

/// The grid as a picture, north at the top. Smoothed between cells of the same room only, so nothing shows through a
/// wall; it fades out where dust ends. Insists that the grid has all its cells.
/// @param fineness  pixels a cell, 1 to 8
Picture heat_picture(const HeatGrid& grid, const HeatScale& scale, const Ramp& ramp, int fineness = 3);

/// Loading under the pointer, ug/ft2; nothing where there is no floor.
std::optional<double> loading_at(const HeatGrid& grid, PaperPoint at);

}
