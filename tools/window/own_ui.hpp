#pragma once

#include "window/stage/ui.hpp"

#include "core/result.hpp"

#include <memory>

namespace flapdoor::window {

/// Exit code where fonts, a display or a file to write are missing.
inline constexpr int cannot_show = 3;

/// Prints problems to stderr. @return `cannot_show`
int tell_problems(const Problems& problems);

/// What screens are drawn with, in the program's own fonts and colors. @param text_scale  1 to 2
Result<std::unique_ptr<Ui>> own_ui(float text_scale = 1.0F);

/// The library ends the program when it finds no display, so this is asked before.
bool has_display();

}
