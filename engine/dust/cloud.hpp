#pragma once

#include "air/room_flow.hpp"
#include "core/philox.hpp"
#include "core/picograms.hpp"
#include "dust/size_class.hpp"
#include "plan/raster.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace flapdoor::dust {

/// What became of a parcel in a spell of time.
enum class Fate : std::uint8_t {
    airborne,
    landed,     ///< on top of whatever stands in its cell
    on_wall,
    left        ///< drawn out through an opening
};

/// Packets of one size class in the air of one room, as a structure of arrays: entry i of each array is parcel i.
/// Positions are meters from the room's south-west floor corner.
struct Cloud {
    std::vector<float> x, y, z;
    std::vector<SizeClass> size;
    std::vector<std::uint32_t> steps;   ///< transport steps made so far: the "when" of its random draws
    std::vector<std::uint64_t> number;  ///< never used twice in a run: the "who" of its random draws
    std::vector<Amount> amount;
    std::vector<float> age;             ///< s since release
    std::vector<Fate> fate;

    std::size_t count() const { return x.size(); }
    void add(float at_x, float at_y, float at_z, SizeClass k, std::uint64_t id, Amount carried);
    /// Drops the parcels that are no longer airborne; the rest keep their order.
    void sweep();
};

/// The room as a parcel meets it.
struct CloudRoom {
    plan::Raster raster;
    float ceiling = 2.4F;               ///< m
    std::vector<float> top;             ///< per cell: height of what stands there, 0 for bare floor, m
    std::vector<float> leaving;         ///< per cell: rate at which air near an opening is drawn out, 1/s
    air::SideFlows flow = {};           ///< air that crosses the sides between cells, m3/s; empty in still air

    /// From what stands in a cell to the ceiling, m; 0 where that is less than air can use.
    float free_height(std::size_t cell) const
    {
        const float free = ceiling - top[cell];
        return static_cast<double>(free) >= air::least_free_height ? free : 0.0F;
    }
    float width() const { return static_cast<float>(raster.rect().width.si); }
    float depth() const { return static_cast<float>(raster.rect().depth.si); }
};

/// How one class moves in one spell: constant for the spell.
struct Motion {
    int steps = 0;          ///< transport steps in the spell
    float dt = 0.0F;        ///< s
    float spread = 0.0F;    ///< standard deviation of one diffusive step per axis, m
    float fall = 0.0F;      ///< settled in one step, m
    float wall_stick = 0.0F;   ///< chance that touching a wall keeps the parcel

    friend bool operator==(const Motion&, const Motion&) = default;
};

/// Steps for a class that keep a diffusive step and the way made with the air within a third of a cell and a fall within a
/// twentieth of the height.
/// @param spell      length of the spell
/// @param longest    longest step allowed whatever the physics permits
/// @param wind       the fastest air in the room
Motion motion(Time spell, Diffusivity K, Length cell, Length height, Speed settling, Speed wall_deposition, Time longest, Speed wind = {});

struct StepTable;

/// How parcels are carried: the result is the same to the bit.
enum class Abreast { as_many_as_possible, one };

/// Moves every airborne parcel through one spell and sets its fate. A parcel's path depends only on the seed, its number
/// and its own steps, so the result does not depend on the order of parcels, on `threads` or on `abreast`.
///
/// Each step: the way made with the air, up and down with the free height; a diffusive move east or west, north or south, then
/// up or down, which walls, ceiling and floor reflect (a wall may keep it) and which the side of furniture turns back; a chance
/// to be drawn out near an opening; then the settling move, which lands what it carries below the top of its cell. Absorbing
/// what merely diffuses through the floor would empty a room of fine dust in minutes; the order matters. Nothing passes
/// through a wall however long the step. Insists that what is airborne is in the room.
/// @return  parcel-steps made
/// Checked against theory in tests/published/random_walk_test.cpp, for equal bits in tests/determinism.
std::uint64_t advance(Cloud& cloud, const StepTable& table, std::uint64_t seed, unsigned threads = 1, Abreast abreast = Abreast::as_many_as_possible);

/// The same for a room whose table is needed only once.
std::uint64_t advance(Cloud& cloud, const CloudRoom& room, const PerClass<Motion>& motions, std::uint64_t seed, unsigned threads = 1,
                      Abreast abreast = Abreast::as_many_as_possible);

/// Fingerprint of positions, fates, classes, steps, numbers and amounts: equal bits in, equal value out. Ages are left out: they
/// tell how a spell was cut up.
std::uint64_t fingerprint(const Cloud& cloud);

}
