#include "dust/cloud.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "dust/eight_parcels.hpp"
#include "dust/one_parcel.hpp"

#include <algorithm>
#include <cmath>
#include <span>
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

Motion motion(Time spell, Diffusivity K, Length cell, Length height, Speed settling, Speed wall_deposition, Time longest, Speed wind)
{
    insist(spell > Time{} && K > Diffusivity{} && cell > Length{} && height > Length{}, "a spell, a spread and a room");
    const double third = cell.si / 3.0;
    double dt = std::min(longest.si, third * third / (2.0 * K.si));
    if (settling.si > 0.0) dt = std::min(dt, height.si / 20.0 / settling.si);
    if (wind.si > 0.0) dt = std::min(dt, third / wind.si);
    Motion m;
    m.steps = static_cast<int>(std::ceil(spell.si / dt));
    dt = spell.si / m.steps;
    m.dt = static_cast<float>(dt);
    m.spread = static_cast<float>(std::sqrt(2.0 * K.si * dt));
    m.fall = static_cast<float>(settling.si * dt);
    // Half of the mean distance of a step is what touches a wall: sticking_probability() of dispersion.hpp for the steps that
    // the kernel makes, which go 1.3 % farther on average than normal ones of the same variance.
    constexpr double mean_distance = 0.808288;
    m.wall_stick = static_cast<float>(std::min(1.0, wall_deposition.si * dt / (0.5 * mean_distance * std::sqrt(2.0 * K.si * dt))));
    return m;
}

namespace {

bool is_inside(const Cloud& cloud, std::size_t i, const StepTable& room)
{
    return cloud.x[i] >= 0.0F && cloud.x[i] <= room.width && cloud.y[i] >= 0.0F && cloud.y[i] <= room.depth && cloud.z[i] >= 0.0F
        && cloud.z[i] <= room.ceiling;
}

/// Parcels do not act on each other, so each can be carried to the end of the spell alone.
std::uint64_t carry_one_by_one(Cloud& cloud, const StepTable& table, std::uint64_t seed, std::size_t begin, std::size_t end)
{
    std::uint64_t made = 0;
    for (std::size_t i = begin; i < end; ++i) {
        if (cloud.fate[i] != Fate::airborne) continue;
        Parcel parcel = parcel_of(cloud, i, table);
        Fate fate = Fate::airborne;
        for (int s = 0; s < table.motions[parcel.size].steps && fate == Fate::airborne; ++s, ++made) fate = take_step(parcel, table, seed);
        put_back(cloud, i, parcel, fate, table);
    }
    return made;
}

}

std::uint64_t advance(Cloud& cloud, const StepTable& table, std::uint64_t seed, unsigned threads, Abreast abreast)
{
    for (std::size_t i = 0; i < cloud.count(); ++i)
        insist(cloud.fate[i] != Fate::airborne || is_inside(cloud, i, table), "a parcel in the air is in the room");
    const auto carry = abreast == Abreast::as_many_as_possible && can_carry_eight() ? carry_eight : carry_one_by_one;
    threads = std::max(1U, threads);
    if (threads == 1 || cloud.count() < 2048) return carry(cloud, table, seed, 0, cloud.count());

    // Each thread owns its own parcels and nothing else.
    std::vector<std::uint64_t> made(threads, 0);
    std::vector<std::thread> workers;
    const std::size_t share = (cloud.count() + threads - 1) / threads;
    for (unsigned t = 0; t < threads; ++t) {
        workers.emplace_back([&, t] { made[t] = carry(cloud, table, seed, std::min(cloud.count(), t * share), std::min(cloud.count(), (t + 1) * share)); });
    }
    std::uint64_t sum = 0;
    for (unsigned t = 0; t < threads; ++t) {
        workers[t].join();
        sum += made[t];
    }
    return sum;
}

std::uint64_t advance(Cloud& cloud, const CloudRoom& room, const PerClass<Motion>& motions, std::uint64_t seed, unsigned threads, Abreast abreast)
{
    return advance(cloud, step_table(room, motions), seed, threads, abreast);
}

std::uint64_t fingerprint(const Cloud& cloud)
{
    Fingerprint print;
    for (const std::vector<float>* axis : {&cloud.x, &cloud.y, &cloud.z})
        for (const float value : *axis) print.add(value);
    print.add_all(std::span<const Fate>(cloud.fate));
    print.add_all(std::span<const SizeClass>(cloud.size));
    print.add_all(std::span<const std::uint32_t>(cloud.steps));
    print.add_all(std::span<const std::uint64_t>(cloud.number));
    print.add_all(std::span<const Amount>(cloud.amount));
    return print.value();
}

}
