#pragma once

#include "window/run/story.hpp"

#include "mechanics/flap_door.hpp"

#include <optional>

namespace flapdoor::window {

/// The flap door that hangs at a time of the run, as its cards hung and taped it; nothing when none does.
std::optional<mechanics::FlapDoor> hung_flap(const Story& story, Time now);

}
