#pragma once

#include "window/quiz/answer_in_hand.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The plan of a drill, north up, with the lettered places; a click points. By key the letters do the same.
/// @param most     pixels that it may take, as wide and as high
/// @param is_told  shows the right places; nothing can be pointed at any more
/// @return         the part of the screen that it takes
Box plan_pointing(Ui& ui, const quiz::PointAtPlan& asked, AnswerInHand& draft, Point most, bool is_told);

}
