#include "site/opening.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::site {

FlapState flap_of(const job::HangFlap& step)
{
    return {step.sheets, step.is_taped, step.has_folds, step.has_dowel && step.sheets == 2, step.gap, step.slit_length, step.slit_foot, step.is_slit_through};
}

mechanics::FlapDoor hung_door(const OpeningState& opening)
{
    insist(opening.flap.has_value(), "a flap door hangs there");
    return hung_door(*opening.flap, opening.plan);
}

mechanics::FlapDoor hung_door(const FlapState& flap, const job::Opening& doorway)
{
    mechanics::FlapDoor door;
    door.width = std::clamp(doorway.width, 0.5_m, 3.0_m);
    door.height = std::clamp(doorway.height, 1.5_m, 3.0_m);
    door.slit_foot = std::min(flap.slit_foot, door.height * 0.5);
    // As much film is left above the slit as is usual below it, whatever was cut.
    door.slit_length = std::min(flap.slit_length, door.height - (door.slit_foot + mechanics::FlapDoor{}.slit_foot));
    door.is_slit_through = flap.is_slit_through && flap.sheets == 2;
    door.hem_height = std::clamp(flap.gap, Length{}, door.height - 0.3_m);
    door.sheets = flap.sheets;
    door.is_taped = flap.is_taped;
    door.has_folds = flap.has_folds;
    if (!flap.has_dowel) door.dowel = {};
    return door;
}

}
