#pragma once

#include "debrief/fault_line.hpp"
#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "job/step_kind.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// A step card as it was carried out, or not.
struct StepLine {
    int number = 1;                     ///< as people count: the first card of the plan is 1
    std::string title;                  ///< of the kind of step
    job::Phase phase = job::Phase::paper;
    std::vector<std::string> by;        ///< as the scenario calls the crew
    job::Outcome outcome = job::Outcome::done;
    text::Sentence reason;              ///< why it was refused or not needed; or what befell who did it
    Time start{}, end{};                ///< time of day
    std::vector<int> faults;            ///< numbers of the faults that speak of it, rising
};

/// One line an entry of the log, in its order.
std::vector<StepLine> step_lines(const job::RunLog& log, const job::Scenario& scenario, const std::vector<FaultLine>& faults);

}
