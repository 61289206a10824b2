#pragma once

#include "window/stage/icon.hpp"
#include "window/stage/ui.hpp"

#include <string_view>

namespace flapdoor::window {

/// One primary button a panel; the others outlined; quiet ones for small things in a row.
enum class Emphasis : int { primary, outlined, quiet };

struct ButtonLook {
    Emphasis emphasis = Emphasis::outlined;
    Icon icon = Icon::none;
    float width = 0.0F; ///< at 100 %; 0 fits the label, below 0 takes all that is left
    bool is_enabled = true;
    bool is_on = false;         ///< held down, as a chosen view
    std::string_view hint = {}; ///< says why it is disabled, or which key does the same
};

/// True when it was pressed. The label may be empty when there is an icon; then the hint is its name for reading aloud.
bool button(Ui& ui, std::string_view name, std::string_view label, const ButtonLook& look = {});

}
