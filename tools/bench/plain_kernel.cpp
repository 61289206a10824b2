#include "plain_kernel.hpp"

#include <algorithm>

namespace flapdoor::bench {

namespace {

using namespace flapdoor::dust;

float bell(std::uint32_t word)
{
    int sum = 0;
    for (int byte = 0; byte < 4; ++byte) sum += static_cast<int>((word >> (8 * byte)) & 0xFFU);
    return static_cast<float>(sum - 510) * (1.0F / 147.80054F);
}

float unit_float(std::uint32_t word) { return static_cast<float>(word >> 8) * 0x1.0p-24F; }

bool mirror(float& value, float low, float high)
{
    if (value >= low && value <= high) return false;
    value = value < low ? low + (low - value) : high - (value - high);
    value = std::max(low, std::min(value, high));
    return true;
}

struct Plan {
    const StepTable& table;
    const CellStep* cells;   // of the class

    int column(float x) const { return std::min(static_cast<int>(x * table.columns_per_meter), table.columns - 1); }
    int row(float y) const { return std::min(static_cast<int>(y * table.rows_per_meter), table.rows - 1); }
    const CellStep& cell(int column, int row) const { return cells[row * table.columns + column]; }
    const CellStep& at(float x, float y) const { return cell(column(x), row(y)); }
};

/// Does a walk along cells, one axis at most, meet no cell that stops it?
bool is_way_free(const Plan& plan, int column, int row, int to_column, int to_row, const auto& stops)
{
    while (column != to_column || row != to_row) {
        const CellStep& here = plan.cell(column, row);
        if (column != to_column) column += to_column > column ? 1 : -1;
        else row += to_row > row ? 1 : -1;
        if (stops(here, plan.cell(column, row))) return false;
    }
    return true;
}

/// With the air to another place: the parcel keeps its share of the free height.
void ride(float& x, float& y, float& z, float to_x, float to_y, const Plan& plan)
{
    to_x = std::max(0.0F, std::min(to_x, plan.table.width));
    to_y = std::max(0.0F, std::min(to_y, plan.table.depth));
    if (!is_way_free(plan, plan.column(x), plan.row(y), plan.column(to_x), plan.row(to_y), [](const CellStep&, const CellStep& next) { return next.free <= 0.0F; }))
        return;
    const CellStep& here = plan.at(x, y);
    const CellStep& there = plan.at(to_x, to_y);
    x = to_x;
    y = to_y;
    if (&here == &there) return;
    if (here.free > 0.0F) z = std::max(there.top, std::min(there.top + (z - here.top) * (there.free / here.free), plan.table.ceiling));
    else z = std::max(z, there.top);
}

/// One step of one parcel. @return its fate after it
Fate step(Cloud& cloud, std::size_t i, const Plan& plan, const Motion& m, std::uint64_t seed)
{
    float& x = cloud.x[i];
    float& y = cloud.y[i];
    float& z = cloud.z[i];
    const Draw draw = Luck{seed, Stream::transport}.draw(cloud.number[i], cloud.steps[i]);
    if (!plan.table.is_still) {
        const CellStep& west_east = plan.at(x, y);
        ride(x, y, z, x + (west_east.east + west_east.east_gain * x), y, plan);
        const CellStep& south_north = plan.at(x, y);
        ride(x, y, z, x, y + (south_north.north + south_north.north_gain * y), plan);
    }
    const auto meets_a_side = [&](const CellStep& here, const CellStep& next) { return next.top > here.top && z <= next.top; };
    bool is_touched = false;

    float to_x = x + m.spread * bell(draw[0]);
    bool touches = mirror(to_x, 0.0F, plan.table.width);
    if (is_way_free(plan, plan.column(x), plan.row(y), plan.column(to_x), plan.row(y), meets_a_side)) {
        x = to_x;
        is_touched = touches;
    }
    float to_y = y + m.spread * bell(draw[1]);
    touches = mirror(to_y, 0.0F, plan.table.depth);
    if (is_way_free(plan, plan.column(x), plan.row(y), plan.column(x), plan.row(to_y), meets_a_side)) {
        y = to_y;
        is_touched = is_touched || touches;
    }
    const CellStep& here = plan.at(x, y);
    z += m.spread * bell(draw[2]);
    mirror(z, here.top, plan.table.ceiling);

    if (is_touched && m.wall_stick > 0.0F && unit_float(Luck{seed, Stream::boundary}.draw(cloud.number[i], cloud.steps[i])[0]) < m.wall_stick)
        return Fate::on_wall;
    if (unit_float(draw[3]) < here.leaving) return Fate::left;
    z -= m.fall;
    if (z >= here.top) return Fate::airborne;
    z = here.top;
    return Fate::landed;
}

}

std::uint64_t advance_plainly(Cloud& cloud, const StepTable& table, std::uint64_t seed)
{
    std::uint64_t made = 0;
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        const Motion& m = table.motions[cloud.size[i]];
        if (cloud.fate[i] != Fate::airborne) continue;
        const Plan plan{table, table.cells.data() + table.first[cloud.size[i]]};
        for (int s = 0; s < m.steps && cloud.fate[i] == Fate::airborne; ++s, ++made) {
            cloud.fate[i] = step(cloud, i, plan, m, seed);
            ++cloud.steps[i];
        }
        cloud.age[i] += m.dt * static_cast<float>(m.steps);
    }
    return made;
}

}
