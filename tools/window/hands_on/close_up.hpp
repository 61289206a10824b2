#pragma once

#include "window/stage/ui.hpp"

#include "site/move_fault.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::window {

/// How a close-up ended in this frame.
enum class CloseUpEnd : int { goes_on, taken, left };

/// A move as the list of a close-up shows it. All words in the language in force.
struct MoveFace {
    std::string name;
    std::string title;
    std::string how;
    std::string refusal;        ///< why it cannot be made now; empty when it can
    bool is_done = false;
};

/// The moves made, in order, and those that could be made next; the latter by title, so that the list gives no order away.
/// @param done, open  faces of both; @return the open one that was pressed
std::optional<std::size_t> move_list(Ui& ui, std::span<const MoveFace> done, std::span<const MoveFace> open);

/// What went wrong up to now, each with its reason.
void fault_notes(Ui& ui, std::span<const site::MoveFault> faults);

/// Buttons below the list: take back, begin again, look it over or use it so, and leave.
struct CloseUpButtons {
    bool can_take_back = false;
    bool is_looked_over = false;    ///< what was left out is shown; "use it so" is offered
    std::string_view use_label = {};
};
enum class CloseUpPress : int { none, take_back, begin_again, look_over, use, leave };
CloseUpPress close_up_buttons(Ui& ui, const CloseUpButtons& look);

/// Order in which open moves are listed: by title.
std::vector<std::size_t> by_title(std::span<const MoveFace> faces);

}
