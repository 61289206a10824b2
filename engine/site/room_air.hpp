#pragma once

#include "air/room_flow.hpp"
#include "dust/evenness.hpp"
#include "dust/step_table.hpp"

#include <cstddef>
#include <vector>

namespace flapdoor::site {

struct Site;
struct AirPath;

/// The moving air of the work room, as its cloud meets it. Follows the surfaces and the flows between zones.
struct RoomAir {
    /// A path out of the work room, and the cells it draws on.
    struct Outlet {
        std::size_t path = 0;               ///< in the site's air paths
        std::vector<std::size_t> cells;     ///< in order
        double rate = 0.0;                  ///< share of the air over those cells that goes that way, 1/s
    };

    air::RoomFlow solver;
    std::vector<Outlet> outlets;
    Speed wind{};                           ///< fastest air in the room
    dust::CoarseBoxes boxes;
    dust::StepTable table;                  ///< for the last spell; empty when the room has changed since
    std::uint64_t table_print = 0;          ///< tells tables apart
};

/// Works the flow in the work room out again: air comes and goes evenly over the air near each opening. Called when the flows
/// between zones have been.
void refresh_room_air(Site& site);

/// The table for a spell in which the classes move so; the last one when nothing has changed.
const dust::StepTable& step_table_for(Site& site, const dust::PerClass<dust::Motion>& motions);

/// The path that takes a parcel which was drawn out at this cell: by chance, in proportion to what each draws there.
/// @param luck  0 to 1
const AirPath& path_taken(const Site& site, std::size_t cell, double luck);

}
