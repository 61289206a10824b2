#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"

#include <vector>

namespace flapdoor::job {

/// A place on the plan that a drawn way goes through.
struct Waypoint {
    Length east{}, north{};     ///< in the coordinates of the scenario's zones

    static void fields(auto& self, auto&& visit)
    {
        visit("east", self.east, required, Range{-300.0_ft, 300.0_ft});
        visit("north", self.north, required, Range{-300.0_ft, 300.0_ft});
    }
    friend bool operator==(const Waypoint&, const Waypoint&) = default;
};

/// A way drawn on the plan, straight from point to point; empty: none was drawn.
using Route = std::vector<Waypoint>;

}
