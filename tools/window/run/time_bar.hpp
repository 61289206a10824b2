#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// Play and pause, from card to card, from fault to fault, speed, the time of day, and the whole day to drag through.
void time_bar(Ui& ui, const Box& box, bool is_roomy, const Story& story, Playback& playback);

}
