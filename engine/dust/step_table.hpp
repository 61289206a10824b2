#pragma once

#include "dust/cloud.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace flapdoor::dust {

/// What a cell of the room does to a parcel in one step of a given length.
struct CellStep {
    // Carried by the air: so far to the east is `east + east_gain * x`, so far to the north `north + north_gain * y`, m.
    float east, east_gain, north, north_gain;
    float top;          ///< height of what stands there, m
    float leaving;      ///< chance to be drawn out in one step
    float free;         ///< free height above `top`, m; 0 in a wall
    float unused = 0.0F;
};

/// A room and the motions of a spell, worked out for stepping: the same for every parcel, so it is kept as long as neither
/// the room, its flows nor the lengths of the steps change.
struct StepTable {
    PerClass<Motion> motions;
    PerClass<std::uint32_t> first{};    ///< where a class's cells begin; classes with steps of one length share theirs
    std::vector<CellStep> cells;        ///< [length of step][row][column]
    float width = 0.0F, depth = 0.0F, ceiling = 0.0F;
    float columns_per_meter = 0.0F, rows_per_meter = 0.0F;
    int columns = 0, rows = 0;
    float most_leaving = 0.0F;          ///< the largest chance of any cell
    bool is_still = true;               ///< no flow carries anything
};

/// Insists that the room has one entry per cell in each of its arrays; the flow may be empty: still air.
///
/// In a cell the air's speed runs straight from that at one side to that at the other, on the cell's own free height, so the
/// field has no divergence but where air is blown in or drawn out. Half a step at the speed of departure and half at that of
/// arrival (the implicit midpoint rule) keeps areas exactly: a uniform cloud stays uniform.
StepTable step_table(const CloudRoom& room, const PerClass<Motion>& motions);

/// The raster cell that a parcel is over, as its steps see it.
std::size_t cell_below(const Cloud& cloud, std::size_t i, const StepTable& table);

}
