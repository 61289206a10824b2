#pragma once

#include "window/stage/ui.hpp"

#include "site/move_fault.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace flapdoor::window {

/// By how much a bag is filled more or less with one press of a key.
inline constexpr double fill_step = 0.05;

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

/// Lists the moves of something in hand and makes the one that is pressed.
/// @param moves    made so far, in order
/// @param count    kinds of moves there are
/// @param face_of  how a move is shown
/// @return true when one was made
template <class Move, class Face>
bool make_a_move(Ui& ui, std::vector<Move>& moves, std::size_t count, const Face& face_of)
{
    std::vector<MoveFace> done, open;
    std::vector<Move> open_moves;
    for (const Move move : moves) done.push_back(face_of(move));
    for (std::size_t i = 0; i < count; ++i) {
        const auto move = static_cast<Move>(i);
        if (std::find(moves.begin(), moves.end(), move) != moves.end()) continue;
        open.push_back(face_of(move));
        open_moves.push_back(move);
    }
    const auto pressed = move_list(ui, done, open);
    if (pressed) moves.push_back(open_moves[*pressed]);
    return pressed.has_value();
}

/// The buttons below, and what they do to the moves.
template <class Move>
CloseUpEnd play_buttons(Ui& ui, std::vector<Move>& moves, bool& is_looked_over, std::string_view use_label)
{
    switch (close_up_buttons(ui, {!moves.empty(), is_looked_over, use_label})) {
        case CloseUpPress::take_back: moves.pop_back(), is_looked_over = false; break;
        case CloseUpPress::begin_again: moves.clear(), is_looked_over = false; break;
        case CloseUpPress::look_over: is_looked_over = true; break;
        case CloseUpPress::use: return CloseUpEnd::taken;
        case CloseUpPress::leave: return CloseUpEnd::left;
        case CloseUpPress::none: break;
    }
    return CloseUpEnd::goes_on;
}

}
