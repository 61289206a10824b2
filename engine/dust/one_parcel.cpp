#include "dust/one_parcel.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

/// Nearly normal, mean 0, variance 1, from the four bytes of a word: their sum has variance 4 (256^2 - 1)/12.
float bell(std::uint32_t word)
{
    const std::uint32_t pairs = (word & 0x00FF00FFU) + ((word >> 8) & 0x00FF00FFU);
    const auto sum = static_cast<int>((pairs & 0xFFFFU) + (pairs >> 16));
    return static_cast<float>(sum - 510) * (1.0F / 147.80054F);
}

float unit_float(std::uint32_t word) { return static_cast<float>(word >> 8) * 0x1.0p-24F; }

float held_within(float value, float low, float high) { return std::max(low, std::min(value, high)); }

/// Mirrors a coordinate into [low, high]; where that is narrower than a step, what would need a second mirror stops at the
/// edge. @return  was an edge met
bool mirror(float& value, float low, float high)
{
    if (value < low) value = low + (low - value);
    else if (value > high) value = high - (value - high);
    else return false;
    value = held_within(value, low, high);
    return true;
}

/// West to east, or south to north: a row of cells and the way from one to the next in the room's arrays.
struct Axis {
    float length, cells_per_meter;
    int cells, stride;

    int cell(float at) const { return std::min(static_cast<int>(at * cells_per_meter), cells - 1); }
};

Axis east_of(const StepTable& table) { return {table.width, table.columns_per_meter, table.columns, 1}; }
Axis north_of(const StepTable& table) { return {table.depth, table.rows_per_meter, table.rows, table.columns}; }

/// A sideways move. One that meets the side of something on its way does not happen: turning back is as likely as coming,
/// which keeps a uniform cloud uniform. Over the top of what stands there, there is free way.
/// @param line   cells along the axis
/// @param floor  height of what stands below the parcel, here and where it gets to
/// @return       was a wall touched
bool shift(float& at, int& cell, float by, const Axis& axis, const CellStep* line, float& floor, float z)
{
    float to = at + by;
    const bool is_touched = mirror(to, 0.0F, axis.length);
    const int end = axis.cell(to);
    float below = floor;
    for (int next = cell; next != end;) {
        next += end > next ? 1 : -1;
        const float side = line[next * axis.stride].top;
        if (side > below && z <= side) return false;
        below = side;
    }
    at = to;
    cell = end;
    floor = below;
    return is_touched;
}

/// The way made with the air along one axis. It goes over what stands there, keeping its share of the free height, and ends
/// before a wall.
void ride(float& at, int& cell, float by, const Axis& axis, const CellStep* line, float& floor, float& z, float ceiling)
{
    const float to = held_within(at + by, 0.0F, axis.length);
    const int end = axis.cell(to);
    for (int next = cell; next != end;) {
        next += end > next ? 1 : -1;
        if (line[next * axis.stride].free <= 0.0F) return;
    }
    const CellStep& here = line[cell * axis.stride];
    const CellStep& there = line[end * axis.stride];
    at = to;
    if (end == cell) return;
    if (here.free > 0.0F) z = held_within(there.top + (z - here.top) * (there.free / here.free), there.top, ceiling);
    else z = std::max(z, there.top);
    cell = end;
    floor = there.top;
}

}

Fate take_step(Parcel& p, const StepTable& table, std::uint64_t seed)
{
    const Motion& m = table.motions[p.size];
    const CellStep* cells = table.cells.data() + table.first[p.size];
    const Axis east = east_of(table);
    const Axis north = north_of(table);
    const Draw draw = Luck{seed, Stream::transport}.draw(p.number, p.step);
    ++p.step;
    if (!table.is_still) {
        const CellStep& start = cells[p.row * table.columns + p.column];
        ride(p.x, p.column, start.east + start.east_gain * p.x, east, cells + p.row * table.columns, p.floor, p.z, table.ceiling);
        const CellStep& then = cells[p.row * table.columns + p.column];
        ride(p.y, p.row, then.north + then.north_gain * p.y, north, cells + p.column, p.floor, p.z, table.ceiling);
    }
    // Sideways at the height it has, one way after the other, then up or down where that led: a move decided on the new height,
    // or straight across a corner, would crowd dust beside furniture and let it through.
    const bool touched_x = shift(p.x, p.column, m.spread * bell(draw[0]), east, cells + p.row * table.columns, p.floor, p.z);
    const bool touched_y = shift(p.y, p.row, m.spread * bell(draw[1]), north, cells + p.column, p.floor, p.z);
    p.z += m.spread * bell(draw[2]);
    mirror(p.z, p.floor, table.ceiling);
    if ((touched_x || touched_y) && m.wall_stick > 0.0F
        && unit_float(Luck{seed, Stream::boundary}.draw(p.number, p.step - 1)[0]) < m.wall_stick)
        return Fate::on_wall;
    if (unit_float(draw[3]) < cells[p.row * table.columns + p.column].leaving) return Fate::left;
    p.z -= m.fall;
    if (p.z >= p.floor) return Fate::airborne;
    p.z = p.floor;
    return Fate::landed;
}

Parcel parcel_of(const Cloud& cloud, std::size_t i, const StepTable& table)
{
    Parcel p;
    p.x = cloud.x[i];
    p.y = cloud.y[i];
    p.z = cloud.z[i];
    p.column = east_of(table).cell(p.x);
    p.row = north_of(table).cell(p.y);
    p.number = cloud.number[i];
    p.step = cloud.steps[i];
    p.size = cloud.size[i];
    p.floor = table.cells[table.first[p.size] + static_cast<std::size_t>(p.row * table.columns + p.column)].top;
    return p;
}

void put_back(Cloud& cloud, std::size_t i, const Parcel& p, Fate fate, const StepTable& table)
{
    const Motion& m = table.motions[p.size];
    cloud.x[i] = p.x;
    cloud.y[i] = p.y;
    cloud.z[i] = p.z;
    cloud.steps[i] = p.step;
    cloud.age[i] += m.dt * static_cast<float>(m.steps);
    cloud.fate[i] = fate;
}

}
