#pragma once

#include "quiz/practice/boxes.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace flapdoor::quiz {

/// The topic of the next question today; nothing when the session is done. Topics that are due take turns: the one asked least
/// today, then what is behind a critical rule, then what has been due longest, then what is known least. A topic that was
/// missed comes again after three questions of other topics; where none is due, others fill in.
/// Insists that no attempt lies after today.
std::optional<Topic> next_topic(const Practice& practice, std::span<const Topic> topics, Day today);

/// Questions that today's session still asks when every answer is right.
std::size_t questions_left(Practice practice, std::span<const Topic> topics, Day today);

/// What is due on a day.
struct SessionDay {
    Day day;
    std::vector<Topic> topics;
    std::size_t questions = 0;
};

/// The sessions from today to the eve of the field day (or two weeks on), when every answer is right and none is left out.
std::vector<SessionDay> sessions_ahead(Practice practice, std::span<const Topic> topics, Day today);

}
