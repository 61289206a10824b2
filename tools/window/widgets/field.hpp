#pragma once

#include "window/stage/ui.hpp"

#include <string>
#include <string_view>

namespace flapdoor::window {

struct FieldLook {
    std::string_view empty_text = {}; ///< shown while nothing is written
    std::string_view problem = {};    ///< what is wrong with what is written; shown below with a sign
    float width = -1.0F;              ///< at 100 %; below 0 takes all that is left
    bool is_enabled = true;
};

/// A labeled line to write in. Enter starts writing, Tab and Escape leave. True when the text changed.
bool text_field(Ui& ui, std::string_view name, std::string_view label, std::string& text, const FieldLook& look = {});

}
