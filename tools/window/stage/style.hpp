#pragma once

#include "window/base/theme.hpp"
#include "window/stage/canvas.hpp"

#include <string_view>

namespace flapdoor::window {

class Ui;

/// Dresses the few parts that the control library draws itself (fields, scroll bars) in the theme.
void dress(const Theme& theme, float scale);

/// A small slip of paper with words, below or above `beside`, kept on the screen.
void draw_hint(Canvas canvas, const Ui& ui, std::string_view text, const Box& beside);

}
