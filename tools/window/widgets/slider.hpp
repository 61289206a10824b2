#pragma once

#include "window/stage/ui.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace flapdoor::window {

struct SliderLook {
    double least = 0.0;
    double most = 1.0;
    double step = 0.0;   ///< values snap to least + k * step; 0 leaves them free
    float width = -1.0F; ///< at 100 %; below 0 takes all that is left
    bool is_enabled = true;
    std::function<std::string(double)> show = {}; ///< the value with its unit; plain digits when empty
    std::string_view hint = {};
};

/// A labeled slider. Drag, click, arrow keys (one step), Page Up and Down (ten), Home and End. True when it changed.
bool slider(Ui& ui, std::string_view name, std::string_view label, double& value, const SliderLook& look);

/// Where a value stands after the keys that a focused slider answers to. Shared with the scrubber.
/// @param step  above 0
double moved_by_keys(Ui& ui, double value, double least, double most, double step);

}
