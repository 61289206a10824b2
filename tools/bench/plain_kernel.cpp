#include "plain_kernel.hpp"

#include "core/steady.hpp"

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
    const CloudRoom& room;
    int columns = static_cast<int>(room.raster.columns());
    int rows = static_cast<int>(room.raster.rows());
    float width = room.width();
    float depth = room.depth();
    float columns_per_meter = static_cast<float>(columns) / width;
    float rows_per_meter = static_cast<float>(rows) / depth;

    int column(float x) const { return std::min(static_cast<int>(x * columns_per_meter), columns - 1); }
    int row(float y) const { return std::min(static_cast<int>(y * rows_per_meter), rows - 1); }
    std::size_t cell(float x, float y) const { return static_cast<std::size_t>(row(y) * columns + column(x)); }

    bool is_way_free(int from_column, int from_row, int to_column, int to_row, float z) const
    {
        while (from_column != to_column || from_row != to_row) {
            const float here = room.top[static_cast<std::size_t>(from_row * columns + from_column)];
            if (from_column != to_column) from_column += to_column > from_column ? 1 : -1;
            else from_row += to_row > from_row ? 1 : -1;
            const float side = room.top[static_cast<std::size_t>(from_row * columns + from_column)];
            if (side > here && z <= side) return false;
        }
        return true;
    }
};

/// One step of one parcel. @return its fate after it
Fate step(Cloud& cloud, std::size_t i, const Plan& plan, const Motion& m, std::uint64_t seed)
{
    float& x = cloud.x[i];
    float& y = cloud.y[i];
    float& z = cloud.z[i];
    const Draw draw = Luck{seed, Stream::transport}.draw(cloud.number[i], cloud.steps[i]);
    bool is_touched = false;

    float to_x = x + m.spread * bell(draw[0]);
    bool touches = mirror(to_x, 0.0F, plan.width);
    if (plan.is_way_free(plan.column(x), plan.row(y), plan.column(to_x), plan.row(y), z)) {
        x = to_x;
        is_touched = touches;
    }
    float to_y = y + m.spread * bell(draw[1]);
    touches = mirror(to_y, 0.0F, plan.depth);
    if (plan.is_way_free(plan.column(x), plan.row(y), plan.column(x), plan.row(to_y), z)) {
        y = to_y;
        is_touched = is_touched || touches;
    }
    const float floor = plan.room.top[plan.cell(x, y)];
    z += m.spread * bell(draw[2]);
    mirror(z, floor, plan.room.ceiling);

    if (is_touched && m.wall_stick > 0.0F && unit_float(Luck{seed, Stream::boundary}.draw(cloud.number[i], cloud.steps[i])[0]) < m.wall_stick)
        return Fate::on_wall;
    const float leaving = plan.room.leaving[plan.cell(x, y)];
    if (leaving > 0.0F) {
        const double gone = -steady::expm1(-static_cast<double>(leaving) * static_cast<double>(m.dt));
        if (unit_float(draw[3]) < static_cast<float>(gone)) return Fate::left;
    }
    z -= m.fall;
    if (z >= floor) return Fate::airborne;
    z = floor;
    return Fate::landed;
}

}

std::uint64_t advance_plainly(Cloud& cloud, const CloudRoom& room, const PerClass<Motion>& motions, std::uint64_t seed)
{
    const Plan plan{room};
    std::uint64_t made = 0;
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        const Motion& m = motions[cloud.size[i]];
        if (cloud.fate[i] != Fate::airborne) continue;
        for (int s = 0; s < m.steps && cloud.fate[i] == Fate::airborne; ++s, ++made) {
            cloud.fate[i] = step(cloud, i, plan, m, seed);
            ++cloud.steps[i];
        }
        cloud.age[i] += m.dt * static_cast<float>(m.steps);
    }
    return made;
}

}
