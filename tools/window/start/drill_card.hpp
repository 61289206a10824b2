#pragma once

#include "window/shell/drills.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// A drill as a small drawing sheet: the plan, its title block with the job in one line, minutes and difficulty.
/// @param box  of the whole sheet; at least card_height(width) tall
Touch drill_card(Ui& ui, const Box& box, const Drill& drill, bool is_chosen);

/// Height a card needs for its words.
float drill_card_height(Ui& ui, float width, const Drill& drill);

/// What is wrong with a drill that does not read. @return height it took
float draw_broken_drill(Ui& ui, Point low, float width, const BrokenDrill& drill);

}
