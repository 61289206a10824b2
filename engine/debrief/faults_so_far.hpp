#pragma once

#include "debrief/fault_line.hpp"
#include "rules/rule_book.hpp"

#include <vector>

namespace flapdoor::debrief {

/// Rules broken up to now that no later card can set right: what a run in progress may tell at once without crying too
/// early. In the order of the sheet; numbers are those of this list.
std::vector<FaultLine> faults_so_far(const rules::RuleBook& book, const job::Scenario& scenario, const job::RunLog& log);

}
