#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// What is shown while the run is being worked out: the place as found, and that it goes on.
/// @param seconds  since it began
void waiting_screen(Ui& ui, const debrief::Inputs& inputs, std::uint64_t seed, double seconds, ScreenState& state);

}
