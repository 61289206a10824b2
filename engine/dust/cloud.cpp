#include "dust/cloud.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "core/steady.hpp"
#include "dust/draws_ahead.hpp"

#include <algorithm>
#include <array>
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

/// West to east, or south to north: a row of cells and the way from one to the next in the room's arrays.
struct Axis {
    float length, cells_per_meter;
    int cells, stride;

    int cell(float at) const { return std::min(static_cast<int>(at * cells_per_meter), cells - 1); }
};

struct Coordinate {
    float at;
    int cell;
};

/// A sideways move. One that meets the side of something on its way does not happen: turning back is as likely as coming,
/// which keeps a uniform cloud uniform. Over the top of what stands there, there is free way.
/// @param line   heights of what stands in the cells along the axis
/// @param floor  height of what stands below the parcel, here and where it gets to
/// @return       was a wall touched
bool shift(Coordinate& place, float by, const Axis& axis, const float* line, float& floor, float z)
{
    float to = place.at + by;
    const bool is_touched = mirror(to, 0.0F, axis.length);
    const int end = axis.cell(to);
    // A move ends in the same cell or the next, hardly ever farther: one turn of this loop, whose branches are easy to guess.
    int cell = place.cell;
    float below = floor;
    do {
        cell += (end > cell) - (end < cell);
        const float side = line[cell * axis.stride];
        if (side > below && z <= side) return false;
        below = side;
    } while (cell != end);
    place = {to, end};
    floor = below;
    return is_touched;
}

/// What of the room decides a path.
struct Way {
    const float* top;
    const float* leaving;
    Axis east, north;
    float ceiling;
};

/// One parcel through the whole spell. Parcels do not act on each other, so each can be carried to its end alone.
std::uint64_t carry(Cloud& cloud, std::size_t i, const Way& way, const Motion& m, std::uint64_t seed)
{
    const Luck luck{seed, Stream::transport};
    Coordinate x{cloud.x[i], way.east.cell(cloud.x[i])};
    Coordinate y{cloud.y[i], way.north.cell(cloud.y[i])};
    float z = cloud.z[i];
    float floor = way.top[y.cell * way.north.stride + x.cell];
    std::uint32_t step = cloud.steps[i];
    std::uint64_t made = 0;
    Fate fate = Fate::airborne;
    DrawsAhead ahead;
    std::array<std::array<float, DrawsAhead::count>, 3> stride;   // in standard deviations, east, north and up
    for (int s = 0; s < m.steps && fate == Fate::airborne; ++s, ++step, ++made) {
        const std::size_t now = static_cast<std::size_t>(s) % DrawsAhead::count;
        if (now == 0) {
            draw_ahead(luck, cloud.number[i], step, ahead);
            for (std::size_t w = 0; w < stride.size(); ++w)
                for (std::size_t n = 0; n < DrawsAhead::count; ++n) stride[w][n] = bell(ahead.words[w][n]);
        }
        // Sideways at the height it has, one way after the other, then up or down where that led: a move decided on the new
        // height, or straight across a corner, would crowd dust beside furniture and let it through.
        const bool touched_x = shift(x, m.spread * stride[0][now], way.east, way.top + y.cell * way.north.stride, floor, z);
        const bool touched_y = shift(y, m.spread * stride[1][now], way.north, way.top + x.cell, floor, z);
        z += m.spread * stride[2][now];
        mirror(z, floor, way.ceiling);
        if ((touched_x || touched_y) && m.wall_stick > 0.0F
            && unit_float(Luck{seed, Stream::boundary}.draw(cloud.number[i], step)[0]) < m.wall_stick) {
            fate = Fate::on_wall;
            continue;
        }
        const float leaving = way.leaving[y.cell * way.north.stride + x.cell];
        if (leaving > 0.0F && unit_float(ahead.words[3][now]) < drawn_out(leaving, m.dt)) {
            fate = Fate::left;
            continue;
        }
        z -= m.fall;
        if (z < floor) {
            z = floor;
            fate = Fate::landed;
        }
    }
    cloud.x[i] = x.at;
    cloud.y[i] = y.at;
    cloud.z[i] = z;
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
    const auto columns = static_cast<int>(room.raster.columns());
    const auto rows = static_cast<int>(room.raster.rows());
    const Way way{room.top.data(), room.leaving.data(), {room.width(), static_cast<float>(columns) / room.width(), columns, 1},
                  {room.depth(), static_cast<float>(rows) / room.depth(), rows, columns}, room.ceiling};
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
