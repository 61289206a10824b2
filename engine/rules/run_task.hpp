#pragma once

#include "rules/evaluate.hpp"
#include "rules/order_marks.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

/// A run's cards and verdicts as a task in ordering, so that a run and a quiz question are marked by one scheme.
struct RunTask {
    OrderTask task;
    OrderAnswer answer;
    std::vector<int> entry_of;          ///< per card: its entry in the log, -1 for a missing card
    std::vector<int> rule_of;           ///< per weighed rule: its place in the book
};

/// Rules in force with a weight. Consequences are wanted but cannot be lost again; broken rules whose order cannot be told
/// by moving cards (states, measures, overlapping cards) become lines.
RunTask run_task(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log);

}
