#pragma once

#include "core/quantity.hpp"

namespace flapdoor::dust {

/// Loss that a central fan adds to a lived-in house by stirring its air through rooms and ducts: as much again where the house
/// loses less than 2/h, 2/h where it loses more; an ordinary furnace filter made no difference to it (Howard-Reed, Wallace &
/// Emmerich, abstract: rates about doubled below 5 um, 2/h more above).
/// @param still  without the fan, to all surfaces
Rate fan_loss(Rate still);

}
