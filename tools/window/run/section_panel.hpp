#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The section through work room and passage, or what was chosen instead: one wall of the work room from inside, the flap door.
/// Beside it the choice, what is happening now, and how the site stands. W steps through the choice.
void section_panel(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state);

}
