#pragma once

#include "window/shell/screen.hpp"
#include "window/shell/settings.hpp"
#include "window/stage/ui.hpp"

#include <span>

namespace flapdoor::window {

/// Keys and what they do, one a line, wrapped to the width left.
void draw_keys(Ui& ui, std::span<const KeyLine> keys);

/// The sheet of keys above a screen, with what can be chosen for all screens. False when it should go.
bool keys_sheet(Ui& ui, std::span<const KeyLine> keys, Settings& settings);

}
