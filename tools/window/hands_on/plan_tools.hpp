#pragma once

#include "window/drawing/board.hpp"

#include "job/scenario.hpp"
#include "job/step.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

/// Where the tools work.
struct PlanGround {
    const job::Scenario& scenario;
    std::vector<std::uint8_t> is_object_there = {}; ///< in the order of the scenario's objects; empty: as found
};

/// What was done with them in a frame.
struct PlanEdit {
    bool has_changed = false;   ///< the card is another one now
    bool is_taken = false;      ///< Enter on a tool: the card is to be carried out as it is
};

/// Parameters of a card, set on the plan itself: the sheeting's edge is dragged and tells its reach in feet, the door, window,
/// register, thing, part or sill is clicked, the cleaning way is drawn or taken as suggested, the bag is filled. With the
/// keyboard: Tab goes from tool to tool, arrows move (6 in a step), Enter chooses or takes.
class PlanTools {
public:
    /// True when that card has something to set on the plan.
    static bool has_tools(const job::Step& step);
    /// One line: what to do. In the language in force; empty without tools.
    static std::string help_for(const job::Step& step);

    /// Draws and reads the tools; goes into the plan's panel, after its drawing.
    /// @param window  part of the screen that the plan fills
    PlanEdit play(Ui& ui, const Box& window, const PaperView& view, const PlanGround& ground, job::Step& step);

private:
    PlanEdit play_route(Ui& ui, const Box& window, Board& board, const PlanGround& ground, job::Route& route);

    std::optional<PaperPoint> pen_;     ///< keyboard pen of the cleaning way
    bool is_drawing_ = false;           ///< by the mouse
};

/// A way in strips across the work room, back and forth, ending at its entrance.
job::Route suggested_route(const PlanGround& ground);

}
