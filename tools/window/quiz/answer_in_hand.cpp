#include "window/quiz/answer_in_hand.hpp"

#include "quiz/lettered.hpp"

#include <numeric>

namespace flapdoor::window {

AnswerInHand blank_draft(const quiz::Question& question)
{
    AnswerInHand draft;
    const std::size_t count = quiz::lettered(question).size();
    draft.ticked.assign(count, false);
    draft.order.resize(count);
    std::iota(draft.order.begin(), draft.order.end(), std::size_t{0});
    return draft;
}

std::optional<quiz::Response> response_of(const quiz::Question& question, const AnswerInHand& draft)
{
    const std::vector<quiz::Lettered> list = quiz::lettered(question);
    if (std::holds_alternative<quiz::Number>(question.kind)) {
        if (draft.typed.empty()) return std::nullopt;
        return quiz::Typed{draft.typed};
    }
    if (std::holds_alternative<quiz::PutInOrder>(question.kind)) {
        quiz::Laid laid;
        for (const std::size_t card : draft.order) laid.cards.push_back(list[card].id);
        return laid;
    }
    if (std::holds_alternative<quiz::ChooseSeveral>(question.kind)) {
        quiz::Chosen chosen;
        for (std::size_t i = 0; i < list.size(); ++i)
            if (draft.ticked[i]) chosen.options.push_back(list[i].id);
        if (chosen.options.empty()) return std::nullopt;
        return chosen;
    }
    if (std::holds_alternative<quiz::PointAtPlan>(question.kind)) {
        if (draft.pointed) return *draft.pointed;
        if (!draft.chosen) return std::nullopt;
        return quiz::Pointed{list[*draft.chosen].id, {}, {}};
    }
    if (!draft.chosen) return std::nullopt;
    return quiz::Chosen{{list[*draft.chosen].id}};
}

}
