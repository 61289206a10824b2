#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The section through work room and passage, and beside it what is happening now and how the site stands.
void section_panel(Ui& ui, const Box& box, const Story& story, const Moment& moment, const ScreenState& state);

}
