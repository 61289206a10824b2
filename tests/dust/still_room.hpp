#pragma once

#include "dust/cloud.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>

/// Rooms and clouds for the tests of the parcel kernel.
namespace flapdoor::dust {

inline constexpr Time as_long_as_physics_permits{1e9};

/// Bare floor, closed openings.
inline CloudRoom still_room(Length width, Length depth, Length ceiling, Length cell)
{
    CloudRoom room{.raster = plan::Raster({{}, {}, width, depth}, cell), .ceiling = static_cast<float>(ceiling.si), .top = {}, .leaving = {}};
    room.top.assign(room.raster.size(), 0.0F);
    room.leaving.assign(room.raster.size(), 0.0F);
    return room;
}

/// A block of cells, corner cells included.
inline void stand(CloudRoom& room, std::size_t west, std::size_t south, std::size_t east, std::size_t north, float top)
{
    for (std::size_t row = south; row <= north; ++row)
        for (std::size_t column = west; column <= east; ++column) room.top[row * room.raster.columns() + column] = top;
}

inline std::size_t cell_below(const CloudRoom& room, const Cloud& cloud, std::size_t i)
{
    return room.raster.cell_at({{static_cast<double>(cloud.x[i])}, {static_cast<double>(cloud.y[i])}});
}

/// Parcels of 1 pg all over the air of a room, none inside what stands in it.
inline Cloud scattered(const CloudRoom& room, std::size_t count, std::uint64_t seed, SizeClass k = SizeClass::um_10)
{
    Cloud cloud;
    const Luck luck{seed, Stream::emission};
    for (std::uint64_t tried = 0; cloud.count() < count; ++tried) {
        const auto part = [&](std::uint32_t axis, float edge) { return static_cast<float>(luck.uniform(tried, axis)) * edge; };
        const float x = part(0, room.width());
        const float y = part(1, room.depth());
        const float z = part(2, room.ceiling);
        if (z > room.top[room.raster.cell_at({{static_cast<double>(x)}, {static_cast<double>(y)}})]) cloud.add(x, y, z, k, tried, {{1}, {}});
    }
    return cloud;
}

inline PerClass<Motion> alike(const Motion& motion)
{
    PerClass<Motion> motions;
    motions.values.fill(motion);
    return motions;
}

inline double share(const Cloud& cloud, Fate fate)
{
    return static_cast<double>(std::count(cloud.fate.begin(), cloud.fate.end(), fate)) / static_cast<double>(cloud.count());
}

}
