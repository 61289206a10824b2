#pragma once

#include "window/run/header.hpp"
#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The keys and the signs, over everything. @return false when it should go
bool help(Ui& ui, const RunTitle& title, ScreenState& state);

}
