#pragma once

#include "dust/ledger.hpp"
#include "dust/load.hpp"
#include "job/building.hpp"
#include "plan/rect.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::site {

/// In the order in which they lie over one another at one height.
enum class SurfaceRole { floor, sheeting, runner, sill, counter, object_top, object_cover, wall };

/// Anything flat that takes dust, cut into patches. A patch of a level surface lies over one raster cell of its zone;
/// a patch of a wall is one column of one height band.
struct Surface {
    std::string name;
    SurfaceRole role = SurfaceRole::floor;
    std::size_t zone = 0;
    dust::AccountId account = 0;
    job::FloorKind finish = job::FloorKind::smooth;
    Length height{};                        ///< of a level surface above the floor
    Area patch_area{};
    std::vector<std::size_t> cells;         ///< [patch] raster cell under it; for walls the cell at its foot
    std::vector<std::uint8_t> band;         ///< [patch] walls only: 0 lowest
    std::vector<dust::Load> patches;
    std::vector<std::uint8_t> is_edge;      ///< [patch] in the strip along walls and things that is hard to clean
    std::vector<std::uint8_t> is_cleaned;   ///< [patch] vacuumed or washed since dust was last made
    Time wet_until{};                       ///< time of day until which it is wet
    std::vector<std::uint8_t> is_torn;      ///< [patch] sheeting only: a foot went through
    int layers = 1;                         ///< sheeting only
    bool is_there = true;                   ///< sheeting comes and goes, objects are moved out
    bool is_soft = false;

    dust::Holding free(std::size_t patch, dust::SizeClass k) { return {patches[patch].free[k], account}; }
    dust::Holding bound(std::size_t patch, dust::SizeClass k) { return {patches[patch].bound[k], account}; }
    Area area() const { return patch_area * static_cast<double>(patches.size()); }
};

Amount total(const Surface& surface);

/// Lead (chips apart) on an area, as a loading.
Loading lead_loading(const Surface& surface);

/// Lead (chips apart) on some of its patches, as a loading; zero for none.
Loading lead_loading(const Surface& surface, const std::vector<std::size_t>& patches);

}
