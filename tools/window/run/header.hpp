#pragma once

#include "debrief/main_job.hpp"
#include "window/shell/settings.hpp"
#include "window/stage/ui.hpp"

#include <optional>

namespace flapdoor::window {

/// What a run is called, on every screen of it.
struct RunTitle {
    std::string drill;
    std::string plan;
    std::string book;
    std::uint64_t seed = 1;
    std::optional<bool> is_passed; ///< nothing while it is being worked out
    bool has_way_back = false;     ///< to another screen
};

RunTitle title_of(const debrief::Inputs& inputs, std::uint64_t seed, std::optional<bool> is_passed);

/// Drill, plan, seed and book; the result; text size, motion, language, help. True when the way back was pressed.
bool header(Ui& ui, const Box& box, const RunTitle& title, Settings& settings);

}
