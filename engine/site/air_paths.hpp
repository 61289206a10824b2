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
    std::size_t opening = 0;
    AirFlow flow{};                         ///< one way, never negative
    dust::Pathway pathway = dust::Pathway::none;
    bool is_return = false;                 ///< into the return duct: settles, is filtered, the rest is blown into the house
};

struct AirPaths {
    std::vector<AirPath> paths;
    std::vector<Pressure> pressure;         ///< [zone] above outdoors
};

/// Cells of the work room whose air an opening draws on.
std::vector<std::size_t> cells_near(const Site& site, std::size_t opening);

/// Solves the zone network for the openings as they are now, and tells the cloud where it is drawn out.
void refresh_air(Site& site);

}
