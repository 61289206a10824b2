#include "dust/step_table.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

/// Speeds of the air at the sides of a cell, on its own free height, m/s.
struct SideSpeeds {
    double west = 0.0, east = 0.0, south = 0.0, north = 0.0;
};

SideSpeeds side_speeds(const CloudRoom& room, std::size_t cell, double free)
{
    const std::size_t columns = room.raster.columns();
    const double across = 1.0 / (room.raster.cell_depth().si * free);
    const double along = 1.0 / (room.raster.cell_width().si * free);
    SideSpeeds speeds;
    speeds.east = room.flow.east[cell] * across;
    speeds.north = room.flow.north[cell] * along;
    if (room.raster.column(cell) > 0) speeds.west = room.flow.east[cell - 1] * across;
    if (cell >= columns) speeds.south = room.flow.north[cell - columns] * along;
    return speeds;
}

struct Carried {
    float by, gain;
};

/// The midpoint rule over a cell that begins at `from`: dx = dt (u(x) + gradient dx/2). Steps for which that has no answer are
/// longer than any that `motion` makes; they go on as far as twice their speed.
Carried carried(double low, double high, double from, double cell, double dt)
{
    const double gradient = (high - low) / cell;
    const double scale = dt / std::max(0.5, 1.0 - 0.5 * gradient * dt);
    return {static_cast<float>(scale * (low - gradient * from)), static_cast<float>(scale * gradient)};
}

void add_cells(StepTable& table, const CloudRoom& room, float dt)
{
    const double width = room.raster.cell_width().si;
    const double depth = room.raster.cell_depth().si;
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
        const float free = room.free_height(cell);
        CellStep step{0.0F, 0.0F, 0.0F, 0.0F, room.top[cell], 0.0F, free, 0.0F};
        if (!table.is_still && free > 0.0F) {
            const SideSpeeds speeds = side_speeds(room, cell, static_cast<double>(free));
            const Carried east = carried(speeds.west, speeds.east, width * static_cast<double>(room.raster.column(cell)), width, static_cast<double>(dt));
            const Carried north = carried(speeds.south, speeds.north, depth * static_cast<double>(room.raster.row(cell)), depth, static_cast<double>(dt));
            step.east = east.by;
            step.east_gain = east.gain;
            step.north = north.by;
            step.north_gain = north.gain;
        }
        if (room.leaving[cell] > 0.0F) step.leaving = static_cast<float>(-steady::expm1(-static_cast<double>(room.leaving[cell]) * static_cast<double>(dt)));
        table.most_leaving = std::max(table.most_leaving, step.leaving);
        table.cells.push_back(step);
    }
}

}

StepTable step_table(const CloudRoom& room, const PerClass<Motion>& motions)
{
    insist(room.top.size() == room.raster.size() && room.leaving.size() == room.raster.size(), "one height and one rate per cell");
    insist(room.flow.east.size() == room.flow.north.size() && (room.flow.east.empty() || room.flow.east.size() == room.raster.size()), "one flow per side, or none");
    StepTable table;
    table.motions = motions;
    table.width = room.width();
    table.depth = room.depth();
    table.ceiling = room.ceiling;
    table.columns = static_cast<int>(room.raster.columns());
    table.rows = static_cast<int>(room.raster.rows());
    table.columns_per_meter = static_cast<float>(table.columns) / table.width;
    table.rows_per_meter = static_cast<float>(table.rows) / table.depth;
    table.is_still = room.flow.east.empty();
    for (const SizeClass k : all_classes()) {
        const auto twin = std::find_if(motions.begin(), motions.end(), [&](const Motion& other) { return other.dt == motions[k].dt; });
        const auto earlier = static_cast<std::size_t>(twin - motions.begin());
        if (earlier < static_cast<std::size_t>(k)) {
            table.first[k] = table.first.values[earlier];
            continue;
        }
        table.first[k] = static_cast<std::uint32_t>(table.cells.size());
        add_cells(table, room, motions[k].dt);
    }
    return table;
}

std::size_t cell_below(const Cloud& cloud, std::size_t i, const StepTable& table)
{
    const int column = std::min(static_cast<int>(cloud.x[i] * table.columns_per_meter), table.columns - 1);
    const int row = std::min(static_cast<int>(cloud.y[i] * table.rows_per_meter), table.rows - 1);
    return static_cast<std::size_t>(row * table.columns + column);
}

}
