#include "dust/cloud.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>
#include <thread>

namespace flapdoor::dust {

void Cloud::add(float at_x, float at_y, float at_z, SizeClass k, std::uint64_t id, Amount carried)
{
    x.push_back(at_x);
    y.push_back(at_y);
    z.push_back(at_z);
    size.push_back(k);
    steps.push_back(0);
    number.push_back(id);
    amount.push_back(carried);
    age.push_back(0.0F);
    fate.push_back(Fate::airborne);
}

void Cloud::sweep()
{
    std::size_t kept = 0;
    for (std::size_t i = 0; i < count(); ++i) {
        if (fate[i] != Fate::airborne) continue;
        x[kept] = x[i];
        y[kept] = y[i];
        z[kept] = z[i];
        size[kept] = size[i];
        steps[kept] = steps[i];
        number[kept] = number[i];
        amount[kept] = amount[i];
        age[kept] = age[i];
        fate[kept] = Fate::airborne;
        ++kept;
    }
    x.resize(kept);
    y.resize(kept);
    z.resize(kept);
    size.resize(kept);
    steps.resize(kept);
    number.resize(kept);
    amount.resize(kept);
    age.resize(kept);
    fate.resize(kept);
}

Motion motion(Time spell, Diffusivity K, Length cell, Length height, Speed settling, Speed wall_deposition, Time longest)
{
    insist(spell > Time{} && K > Diffusivity{} && cell > Length{} && height > Length{}, "a spell, a spread and a room");
    const double third = cell.si / 3.0;
    double dt = std::min(longest.si, third * third / (2.0 * K.si));
    if (settling.si > 0.0) dt = std::min(dt, height.si / 20.0 / settling.si);
    Motion m;
    m.steps = static_cast<int>(std::ceil(spell.si / dt));
    dt = spell.si / m.steps;
    m.dt = static_cast<float>(dt);
    m.spread = static_cast<float>(std::sqrt(2.0 * K.si * dt));
    m.fall = static_cast<float>(settling.si * dt);
    // Half of the mean distance of a step is what touches a wall: sticking_probability() of dispersion.hpp for the steps that
    // bell() makes, which go 1.3 % farther on average than normal ones of the same variance.
    constexpr double mean_distance = 0.808288;
    m.wall_stick = static_cast<float>(std::min(1.0, wall_deposition.si * dt / (0.5 * mean_distance * std::sqrt(2.0 * K.si * dt))));
    return m;
}

namespace {

/// Nearly normal, mean 0, variance 1, from the four bytes of a word: their sum has variance 4 (256^2 - 1)/12.
float bell(std::uint32_t word)
{
    const std::uint32_t pairs = (word & 0x00FF00FFU) + ((word >> 8) & 0x00FF00FFU);
    const auto sum = static_cast<int>((pairs & 0xFFFFU) + (pairs >> 16));
    return static_cast<float>(sum - 510) * (1.0F / 147.80054F);
}

float unit_float(std::uint32_t word) { return static_cast<float>(word >> 8) * 0x1.0p-24F; }

/// Mirrors a coordinate into [low, high]; where that is narrower than a step, what would need a second mirror stops at the
/// edge. @return  was an edge met
bool mirror(float& value, float low, float high)
{
    if (value < low) value = low + (low - value);
    else if (value > high) value = high - (value - high);
    else return false;
    value = std::max(low, std::min(value, high));
    return true;
}

/// The share of a well-stirred air that is drawn out in one step at a rate.
float drawn_out(float rate, float dt) { return static_cast<float>(-steady::expm1(-static_cast<double>(rate) * static_cast<double>(dt))); }

struct Grid {
    float columns_per_meter, rows_per_meter;
    int columns, rows;

    int column(float x) const { return std::min(static_cast<int>(x * columns_per_meter), columns - 1); }
    int row(float y) const { return std::min(static_cast<int>(y * rows_per_meter), rows - 1); }
};

/// Where a parcel is: the point and the cell below it.
struct Spot {
    float x, y, z;
    int column, row;
};

/// What of the room decides a path.
struct Way {
    const float* top;
    const float* leaving;
    Grid grid;
    float width, depth, ceiling;

    std::size_t cell(int column, int row) const { return static_cast<std::size_t>(row * grid.columns + column); }
    float top_at(const Spot& at) const { return top[cell(at.column, at.row)]; }
    /// Does what stands in a cell stop a parcel that comes from another at a height? Over its top there is free way.
    bool stops(float side, float floor, float z) const { return side > floor && z <= side; }

    /// A sideways move east or west. One that meets the side of something on its way does not happen: turning back is as
    /// likely as coming, which keeps a uniform cloud uniform. @return  was a wall touched
    bool shift_x(Spot& at, float by) const
    {
        float x = at.x + by;
        const bool is_touched = mirror(x, 0.0F, width);
        const int end = grid.column(x);
        for (int c = at.column; c != end;) {
            const float here = top[cell(c, at.row)];
            c += end > c ? 1 : -1;
            if (stops(top[cell(c, at.row)], here, at.z)) return false;
        }
        at.x = x;
        at.column = end;
        return is_touched;
    }

    bool shift_y(Spot& at, float by) const
    {
        float y = at.y + by;
        const bool is_touched = mirror(y, 0.0F, depth);
        const int end = grid.row(y);
        for (int r = at.row; r != end;) {
            const float here = top[cell(at.column, r)];
            r += end > r ? 1 : -1;
            if (stops(top[cell(at.column, r)], here, at.z)) return false;
        }
        at.y = y;
        at.row = end;
        return is_touched;
    }
};

/// One parcel through the whole spell. Parcels do not act on each other, so each can be carried to its end alone.
std::uint64_t carry(Cloud& cloud, std::size_t i, const Way& way, const Motion& m, std::uint64_t seed)
{
    const Luck luck{seed, Stream::transport};
    Spot at{cloud.x[i], cloud.y[i], cloud.z[i], way.grid.column(cloud.x[i]), way.grid.row(cloud.y[i])};
    std::uint32_t step = cloud.steps[i];
    std::uint64_t made = 0;
    Fate fate = Fate::airborne;
    for (int s = 0; s < m.steps && fate == Fate::airborne; ++s, ++step, ++made) {
        const Draw draw = luck.draw(cloud.number[i], step);
        // Sideways at the height it has, one way after the other, then up or down where that led: a move decided on the new
        // height, or straight across a corner, would crowd dust beside furniture and let it through.
        const bool touched_x = way.shift_x(at, m.spread * bell(draw[0]));
        const bool touched_y = way.shift_y(at, m.spread * bell(draw[1]));
        const float floor = way.top_at(at);
        at.z += m.spread * bell(draw[2]);
        mirror(at.z, floor, way.ceiling);
        if ((touched_x || touched_y) && m.wall_stick > 0.0F
            && unit_float(Luck{seed, Stream::boundary}.draw(cloud.number[i], step)[0]) < m.wall_stick) {
            fate = Fate::on_wall;
            continue;
        }
        const float leaving = way.leaving[way.cell(at.column, at.row)];
        if (leaving > 0.0F && unit_float(draw[3]) < drawn_out(leaving, m.dt)) {
            fate = Fate::left;
            continue;
        }
        at.z -= m.fall;
        if (at.z < floor) {
            at.z = floor;
            fate = Fate::landed;
        }
    }
    cloud.x[i] = at.x;
    cloud.y[i] = at.y;
    cloud.z[i] = at.z;
    cloud.steps[i] = step;
    cloud.age[i] += m.dt * static_cast<float>(m.steps);
    cloud.fate[i] = fate;
    return made;
}

bool is_inside(const Cloud& cloud, std::size_t i, const CloudRoom& room)
{
    return cloud.x[i] >= 0.0F && cloud.x[i] <= room.width() && cloud.y[i] >= 0.0F && cloud.y[i] <= room.depth() && cloud.z[i] >= 0.0F
        && cloud.z[i] <= room.ceiling;
}

}

std::uint64_t advance(Cloud& cloud, const CloudRoom& room, const PerClass<Motion>& motions, std::uint64_t seed, unsigned threads)
{
    insist(room.top.size() == room.raster.size() && room.leaving.size() == room.raster.size(), "one height and one rate per cell");
    for (std::size_t i = 0; i < cloud.count(); ++i)
        insist(cloud.fate[i] != Fate::airborne || is_inside(cloud, i, room), "a parcel in the air is in the room");
    const Grid grid{static_cast<float>(room.raster.columns()) / room.width(), static_cast<float>(room.raster.rows()) / room.depth(),
                    static_cast<int>(room.raster.columns()), static_cast<int>(room.raster.rows())};
    const Way way{room.top.data(), room.leaving.data(), grid, room.width(), room.depth(), room.ceiling};
    const auto carry_range = [&](std::size_t begin, std::size_t end) {
        std::uint64_t made = 0;
        for (std::size_t i = begin; i < end; ++i)
            if (cloud.fate[i] == Fate::airborne) made += carry(cloud, i, way, motions[cloud.size[i]], seed);
        return made;
    };
    threads = std::max(1U, threads);
    if (threads == 1 || cloud.count() < 2048) return carry_range(0, cloud.count());

    // Each thread owns its own parcels and nothing else.
    std::vector<std::uint64_t> made(threads, 0);
    std::vector<std::thread> workers;
    const std::size_t share = (cloud.count() + threads - 1) / threads;
    for (unsigned t = 0; t < threads; ++t) {
        workers.emplace_back([&, t] { made[t] = carry_range(std::min(cloud.count(), t * share), std::min(cloud.count(), (t + 1) * share)); });
    }
    std::uint64_t sum = 0;
    for (unsigned t = 0; t < threads; ++t) {
        workers[t].join();
        sum += made[t];
    }
    return sum;
}

std::uint64_t fingerprint(const Cloud& cloud)
{
    Fingerprint print;
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        print.add(cloud.x[i]);
        print.add(cloud.y[i]);
        print.add(cloud.z[i]);
        print.add(cloud.fate[i]);
        print.add(cloud.steps[i]);
        print.add(cloud.amount[i].dust.count);
        print.add(cloud.amount[i].lead.count);
    }
    return print.value();
}

}
