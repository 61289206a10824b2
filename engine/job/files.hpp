#pragma once

#include "core/result.hpp"
#include "job/scenario.hpp"
#include "job/work_plan.hpp"

#include <string>
#include <string_view>

namespace flapdoor::job {

/// A scenario from the text of its file, checked: ids are unique, what is named exists, openings lie in their walls,
/// doors have their zone behind them, things stand in their zones. All problems come at once, up to 200.
Result<Scenario> read_scenario(std::string_view text, const std::string& file_name);

/// A work plan from the text of its file, checked against its scenario: it is made for it, and everything it names is
/// there.
Result<WorkPlan> read_plan(std::string_view text, const std::string& file_name, const Scenario& scenario);

}
