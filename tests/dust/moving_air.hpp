#pragma once

#include "still_room.hpp"

#include <cmath>
#include <vector>

/// Moving air for the tests of the parcel kernel.
namespace flapdoor::dust {

inline bool is_air(const CloudRoom& room, std::size_t cell) { return room.free_height(cell) > 0.0F; }

/// Air that goes round and round without source or sink: differences of a stream function that is zero wherever a corner
/// touches a wall. @param strength  of the largest difference there can be, m3/s
inline void stir(CloudRoom& room, double strength)
{
    const std::size_t columns = room.raster.columns();
    const std::size_t rows = room.raster.rows();
    const auto stream = [&](std::size_t column, std::size_t row) {   // at the south-west corner of a cell
        if (column == 0 || row == 0 || column == columns || row == rows) return 0.0;
        const std::size_t cell = row * columns + column;
        if (!is_air(room, cell) || !is_air(room, cell - 1) || !is_air(room, cell - columns) || !is_air(room, cell - columns - 1)) return 0.0;
        const double x = static_cast<double>(column) / static_cast<double>(columns);
        const double y = static_cast<double>(row) / static_cast<double>(rows);
        return strength * (std::sin(3.14159265 * x) * std::sin(3.14159265 * y) + 0.5 * std::sin(9.42477796 * x) * std::sin(6.28318531 * y));
    };
    room.flow = {std::vector<double>(room.raster.size(), 0.0), std::vector<double>(room.raster.size(), 0.0)};
    for (std::size_t row = 0; row < rows; ++row)
        for (std::size_t column = 0; column < columns; ++column) {
            const std::size_t cell = row * columns + column;
            if (column + 1 < columns) room.flow.east[cell] = stream(column + 1, row + 1) - stream(column + 1, row);
            if (row + 1 < rows) room.flow.north[cell] = stream(column, row + 1) - stream(column + 1, row + 1);
        }
}

inline air::RoomPlan plan_of(const CloudRoom& room)
{
    air::RoomPlan plan{room.raster, {}};
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) plan.free_height.push_back(static_cast<double>(room.free_height(cell)));
    return plan;
}

inline Speed wind(const CloudRoom& room) { return air::fastest(plan_of(room), room.flow); }

/// Air in at some cells and out at others, m3/s each way, in proportion to the air over each cell; what goes out takes dust.
inline void blow(CloudRoom& room, const std::vector<std::size_t>& in, const std::vector<std::size_t>& out, double flow)
{
    const air::RoomPlan plan = plan_of(room);
    const auto height = [&](const std::vector<std::size_t>& cells) {
        double sum = 0.0;
        for (const std::size_t cell : cells) sum += plan.free_height[cell];
        return sum;
    };
    std::vector<double> sources(room.raster.size(), 0.0);
    for (const std::size_t cell : in) sources[cell] += flow * plan.free_height[cell] / height(in);
    for (const std::size_t cell : out) {
        sources[cell] -= flow * plan.free_height[cell] / height(out);
        room.leaving[cell] = is_air(room, cell) ? static_cast<float>(flow / (height(out) * room.raster.cell_area().si)) : 0.0F;
    }
    room.flow = air::RoomFlow().solve(plan, sources);
}

/// For each cell, the part of the room it belongs to when only what reaches the ceiling is in the way: no part crosses a corner.
inline std::vector<int> regions(const CloudRoom& room)
{
    const std::size_t columns = room.raster.columns();
    std::vector<int> region(room.raster.size(), -1);
    for (std::size_t first = 0; first < region.size(); ++first) {
        if (region[first] >= 0 || room.top[first] >= room.ceiling) continue;
        std::vector<std::size_t> waiting{first};
        while (!waiting.empty()) {
            const std::size_t cell = waiting.back();
            waiting.pop_back();
            if (region[cell] >= 0 || room.top[cell] >= room.ceiling) continue;
            region[cell] = static_cast<int>(first);
            if (room.raster.column(cell) > 0) waiting.push_back(cell - 1);
            if (room.raster.column(cell) + 1 < columns) waiting.push_back(cell + 1);
            if (cell >= columns) waiting.push_back(cell - columns);
            if (cell + columns < region.size()) waiting.push_back(cell + columns);
        }
    }
    return region;
}

}
