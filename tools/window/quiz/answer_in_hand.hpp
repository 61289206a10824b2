#pragma once

#include "quiz/question.hpp"
#include "window/widgets/card.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::window {

/// An answer that is being given: what is chosen, ticked, laid, typed or pointed at so far.
struct AnswerInHand {
    std::optional<std::size_t> chosen;
    std::vector<bool> ticked;
    std::vector<std::size_t> order;     ///< cards by their place in the question, first to last
    std::string typed;
    std::optional<quiz::Pointed> pointed;
    CardDrag drag;                      ///< of the list of cards
};

/// Nothing answered yet; cards as the question lays them out.
AnswerInHand blank_draft(const quiz::Question& question);

/// The answer as it stands; nothing while there is none yet.
std::optional<quiz::Response> response_of(const quiz::Question& question, const AnswerInHand& draft);

}
