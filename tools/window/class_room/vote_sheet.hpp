#pragma once

#include "window/class_room/class_question.hpp"
#include "window/stage/ui.hpp"

#include <string>

namespace flapdoor::window {

/// What was asked for on the sheet of a question.
enum class VotePress : int { none, reveal, play_on };

/// A question with its answers, large. A click or Enter on an answer adds a vote, minus takes one away; digits typed on it set
/// the count; the keys 1 to 9 add a vote anywhere. A second vote keeps the first beside it. After the reveal every answer says by
/// sign and word how it stands, and why. What ends the question stands at the foot, whatever scrolls above it.
class VoteSheet {
public:
    VotePress play(Ui& ui, const Box& box, ClassQuestion& question);

private:
    void answer(Ui& ui, ClassQuestion& question, std::size_t place);
    void take_votes(Ui& ui, ClassAnswer& answer, const Touch& touch);
    static void head(Ui& ui, const ClassQuestion& question);
    VotePress foot(Ui& ui, const Box& box, ClassQuestion& question);

    std::string typing_on_;     ///< the answer whose count is being typed
};

}
