#pragma once

#include "quiz/bank.hpp"
#include "quiz/sitting.hpp"
#include "quiz/statistics/answer_table.hpp"

#include <span>
#include <vector>

namespace flapdoor::quiz {

/// Kept sittings as a table, a row each, the questions in the order in which they first come. A question on several papers is
/// one question, whatever was shuffled or drawn: its answers are told by what is offered in its bank, by the mistake behind
/// them, or as they were given. Questions of banks that are not among these keep the ids of their answers.
/// Sittings that were not finished stay out: what was not reached is neither right nor wrong.
AnswerTable table_of(std::span<const SittingResult> sittings, std::span<const Bank> banks);

}
