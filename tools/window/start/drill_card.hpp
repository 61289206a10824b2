#pragma once

#include "window/shell/drills.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// A drill as a small drawing sheet: the plan, its title block with the job in one line, minutes and difficulty.
/// @param box  of the whole sheet
/// @param picture  height of the plan; what is left has room for drill_words_height
Touch drill_card(Ui& ui, const Box& box, float picture, const Drill& drill, bool is_chosen);

/// Height of a card's title block.
float drill_words_height(Ui& ui, float width, const Drill& drill);

/// What is wrong with a drill that does not read. @return height it took
float draw_broken_drill(Ui& ui, Point low, float width, const BrokenDrill& drill);

}
