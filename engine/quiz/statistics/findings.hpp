#pragma once

#include "quiz/statistics/question_statistics.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

/// What the figures of a question give reason to look at, worst first. Bounds are rules of thumb (memory): right by more
/// than 95 % or fewer than 20 % says little; a wrong answer that fewer than 5 % of at least `enough_people` give is idle. A
/// wrong answer that a single person gave is no pattern.
std::vector<Found> findings_in(const QuestionStatistics& question);

/// A sentence for the instructor, in the language spoken.
std::string tell(const Found& found, const QuestionStatistics& question);

}
