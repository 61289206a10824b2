#pragma once

#include "window/quiz/answer_in_hand.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// What a question is answered with: choices, cards, a line to write on, the plan. Letters choose by key.
/// @param told  the answer that was given, when it is to be shown how it came out; then nothing can be changed any more
void answer_panel(Ui& ui, const quiz::Question& question, AnswerInHand& draft, const quiz::Response* told);

}
