#pragma once

#include "dust/ledger.hpp"
#include "dust/size_class.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace flapdoor::site {

struct Site;

using PerClassAmount = dust::PerClass<Amount>;

/// One way by which air leaves a zone, as the dust sees it.
struct AirPath {
    std::size_t from = 0;                   ///< zone
    std::optional<std::size_t> to;          ///< zone; nothing: outdoors
    std::optional<std::size_t> opening;     ///< nothing: cracks of the outer walls
    AirFlow flow{};                         ///< one way, never negative
    dust::Pathway pathway = dust::Pathway::none;
    bool is_return = false;                 ///< into the return duct: settles, is filtered, the rest is blown into the house
    dust::PerClass<double> passes{{1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0}};   ///< share that gets through the opening; the rest stays in the zone's air
};

/// Clean air that comes into the work room from outdoors.
struct FreshAir {
    std::optional<std::size_t> opening;     ///< nothing: cracks of the outer walls
    AirFlow flow{};
};

struct AirPaths {
    std::vector<AirPath> paths;
    std::vector<FreshAir> fresh;
    std::vector<Pressure> pressure;         ///< [zone] above outdoors
};

/// Cells of the work room whose air an opening draws on; for the cracks of the outer walls those along the walls.
std::vector<std::size_t> cells_near(const Site& site, std::optional<std::size_t> opening);

/// Solves the zone network for the openings as they are now, and tells the cloud where it is drawn out.
void refresh_air(Site& site);

}
