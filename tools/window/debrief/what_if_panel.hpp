#pragma once

#include "window/debrief/what_if_job.hpp"
#include "window/stage/ui.hpp"

#include <optional>
#include <string>

namespace flapdoor::window {

/// What came of a frame of the sheet.
struct WhatIfPress {
    bool is_asked = false;          ///< it is to be worked out
    bool is_stopped = false;
    std::string shown_rule = {};    ///< whose fault is to be shown; empty: none
};

/// What each mistake did: the same day carried out again with the mistake repaired, and the difference in what got out, what
/// lies on the floor, and time. The costliest first. Pressing a row shows its fault.
WhatIfPress what_if_panel(Ui& ui, const Box& box, WhatIfJob& job, bool has_faults);

}
