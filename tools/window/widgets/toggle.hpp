#pragma once

#include "window/stage/ui.hpp"

#include <string_view>

namespace flapdoor::window {

struct ToggleLook {
    bool is_enabled = true;
    std::string_view hint = {};
};

/// A switch with its label. True when it changed.
bool toggle(Ui& ui, std::string_view name, std::string_view label, bool& is_on, const ToggleLook& look = {});

}
