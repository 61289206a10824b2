#pragma once

#include "plan/raster.hpp"

#include <cstddef>
#include <memory>
#include <vector>

namespace flapdoor::air {

/// The air of a room over its plan raster: how high it stands free in each cell.
struct RoomPlan {
    plan::Raster raster;
    std::vector<double> free_height;    ///< [cell] m, from what stands there to the ceiling; below 1 mm the cell is a wall
};

inline constexpr double least_free_height = 1e-3;

/// Air that crosses the sides between cells, over the free height, m3/s. The outer walls pass nothing.
struct SideFlows {
    std::vector<double> east;    ///< [cell] to the neighbor in the east; 0 in the last column
    std::vector<double> north;   ///< [cell] to the neighbor in the north; 0 in the last row
};

/// Potential flow in the plan of a room: no eddies, no jets; what is blown in finds its way to where it is drawn out, over
/// low furniture and around what reaches the ceiling. The side between two cells is as high as the lower of their free heights.
///
/// Factors of the last few sets of barriers are kept, so that a change of flows alone costs one solution. Copies share them.
/// Same bits on every build: a direct solution without pivoting, in an order that depends on the barriers alone.
class RoomFlow {
public:
    /// @param sources  [cell] air blown in, negative where it is drawn out, m3/s; insists on 0 in walls. What does not add up to
    ///                 zero in a part of the room that is closed off is made up evenly by volume there: leaks nobody drew.
    /// @return         flows that balance in every cell but for rounding
    SideFlows solve(const RoomPlan& room, std::vector<double> sources);

    /// How often a set of barriers was met for the first time, or again after it was forgotten.
    std::size_t factored() const { return factored_; }

private:
    struct Factors;
    std::vector<std::shared_ptr<const Factors>> kept_;   ///< the last used first
    std::size_t factored_ = 0;
};

/// The largest speed of air through any side of a cell.
Speed fastest(const RoomPlan& room, const SideFlows& flows);

}
