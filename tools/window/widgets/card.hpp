#pragma once

#include "window/stage/ui.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace flapdoor::window {

enum class CardState : int { waiting, under_way, done, refused, caution };

/// What a step card shows. Its name stays the same when the card moves.
struct CardFace {
    std::string name = {};
    int number = 0; ///< place in the plan, from 1; 0 shows none
    std::string title = {};
    std::string note = {}; ///< one or two lines below; on a refused card the reason
    CardState state = CardState::waiting;
    std::string state_word = {}; ///< beside the state's sign; empty for waiting
    bool is_chosen = false;
};

/// One card over the width left, taller when its words wrap. `ring` and keyboard as any touch.
/// @param has_grip  shows that it can be dragged
Touch card(Ui& ui, const CardFace& face, bool has_grip = false, float room_on_the_right = 0.0F);

struct CardListEvent {
    enum class Kind : int { chosen, moved } kind = Kind::chosen;
    std::size_t from = 0;
    std::size_t to = 0; ///< place after the move, as if the card were taken out first
};

/// Cards in order. Click or Enter chooses; dragging, Alt + Up / Down, the arrow buttons of the chosen card and Up / Down on it
/// move it; on the others Up and Down walk.
/// @param drag  what the list remembers between frames; one per list, held by the screen
struct CardDrag {
    std::optional<std::size_t> card;
    float grip_y = 0.0F;
};
std::optional<CardListEvent> card_list(Ui& ui, std::span<const CardFace> cards, CardDrag& drag, bool can_move = true);

}
