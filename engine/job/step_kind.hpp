#pragma once

#include "core/fields.hpp"

namespace flapdoor::job {

/// Where in the job a card belongs. For grouping cards only; the order is the trainee's.
enum class Phase { paper, set_up, work, waste, cleaning, verification, hand_over };

/// Who may carry a card out under the rule.
enum class Hands {
    anyone,                 ///< outside the rule
    trained,                ///< a certified renovator or a worker trained by one
    certified               ///< only the certified renovator, in person
};

/// What the time a card names is counted by.
enum class Per { card, person, item, area /* square meter */, own /* the card's own parameter says how long */ };

}

namespace flapdoor::inline core {
template <> struct Words<job::Phase> {
    static constexpr std::array<std::string_view, 7> words{"paper", "set-up", "work", "waste", "cleaning", "verification", "hand-over"};
};
template <> struct Words<job::Hands> { static constexpr std::array<std::string_view, 3> words{"anyone", "trained", "certified"}; };
}
