#include "site/opening.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::site {

mechanics::FlapDoor hung_door(const OpeningState& opening)
{
    insist(opening.flap.has_value(), "a flap door hangs there");
    const FlapState& flap = *opening.flap;
    mechanics::FlapDoor door;
    door.width = std::clamp(opening.plan.width, 0.5_m, 3.0_m);
    door.height = std::clamp(opening.plan.height, 1.5_m, 3.0_m);
    door.slit_length = std::min(door.slit_length, door.height - door.slit_foot * 2.0);   // as much film left above it as below
    door.hem_height = std::clamp(flap.gap, Length{}, door.height - 0.3_m);
    door.sheets = flap.sheets;
    door.is_taped = flap.is_taped;
    door.has_folds = flap.has_folds;
    if (!flap.has_dowel) door.dowel = {};
    return door;
}

}
