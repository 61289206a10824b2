#pragma once

#include "core/quantity.hpp"

namespace flapdoor::air {

/// Air through one opening in both directions at once; neither is negative.
struct TwoWayFlow {
    AirFlow out;   ///< from here to there
    AirFlow in;    ///< from there to here

    constexpr AirFlow net() const { return out - in; }
};

}
