#pragma once

#include "mechanics/flap_swing.hpp"

#include <vector>

namespace flapdoor::mechanics {

/// Hole that a hung flap door leaves to the air under a steady pressure difference: the slit and what the second sheet leaves
/// open beyond it, in a row, with the pressure shared out between them so that both pass the same flow; the part of the slit
/// that a short second sheet leaves bare beside them. Pressure out of the room presses the second sheet shut.
/// @param leans        of this door, as `leans` gives them; beyond their last pressure the door stands as it stood there
/// @param toward_room  positive: away from the frame
Area leak_area(const FlapDoor& door, const std::vector<Lean>& leans, Pressure toward_room);

}
