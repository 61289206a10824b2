#include "quiz/making/generator.hpp"

#include "rules/vocabulary.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

using text::to_say;

/// May somebody of that role carry out a card that needs such hands? An untrained person may do no renovation task:
/// 40 CFR 745.89(d)(1); inspection and verification are the certified renovator's own: 745.85(b), 745.90(b)(1).
bool may(job::Role role, job::Hands hands)
{
    switch (hands) {
    case job::Hands::anyone: return true;
    case job::Hands::trained: return role != job::Role::untrained;
    case job::Hands::certified: return role == job::Role::certified_renovator;
    }
    return false;
}

constexpr std::string_view role_text(job::Role role)
{
    switch (role) {
    case job::Role::certified_renovator: return to_say("A certified renovator");
    case job::Role::trained_worker: return to_say("A worker whom the renovator has trained for the task");
    case job::Role::untrained: return to_say("A helper without training");
    }
    return {};
}

/// Who may carry out one of the drill's cards.
std::optional<Made> who_may_do(const Setting& setting)
{
    std::vector<const rules::StepWords*> steps;
    for (const rules::StepWords& step : rules::step_words())
        if (step.hands != job::Hands::anyone) steps.push_back(&step);
    Dice dice = setting.dice("who-may-do");
    // As many cards for certified hands as for trained ones, so that the answer cannot be guessed.
    const job::Hands hands = dice.between(0, 1) == 0 ? job::Hands::trained : job::Hands::certified;
    std::erase_if(steps, [&](const rules::StepWords* step) { return step->hands != hands; });
    const rules::StepWords& step = *dice.one_of(steps);
    MadeChoice choice;
    for (const job::Role role : {job::Role::certified_renovator, job::Role::trained_worker, job::Role::untrained}) {
        const bool is_right = may(role, hands);
        const std::string_view mistake = is_right ? (role == job::Role::trained_worker ? "only-the-renovator" : "") : role == job::Role::untrained ? "anyone-may-help" : "trained-is-enough";
        choice.options.push_back({std::string(word_of(role)), phrase(role_text(role)), is_right, std::string(mistake)});
    }
    return Made{{{"step", phrase(step.title)}}, std::move(choice)};
}

}

std::vector<Generator> crew_generators() { return {{"who-may-do", {"step"}, {"trained-is-enough", "anyone-may-help", "only-the-renovator"}, who_may_do}}; }

}
