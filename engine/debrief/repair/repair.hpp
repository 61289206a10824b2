#pragma once

#include "debrief/repair/plan_edit.hpp"
#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "rules/evaluate.hpp"
#include "text/sentence.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// A run that somebody keeps the rules by, to take missing cards and right settings from. Refers to plan and log.
struct Pattern {
    const job::WorkPlan& plan;
    const job::RunLog& log;
};

/// What a repair may look at. Refers to everything; all of it must outlive the repair.
struct RepairShop {
    const job::Scenario& scenario;
    const job::WorkPlan& plan;              ///< that was carried out
    const job::RunLog& log;
    std::optional<Pattern> pattern;
    /// Why a card cannot be carried out when it comes just before card `at` of the plan; nothing when it can.
    std::function<std::optional<text::Sentence>(int at, const job::Card& card)> why_not;
};

/// How the plan would have to be changed for one rule to hold.
struct Repair {
    std::vector<PlanEdit> edits;
    std::string no_way;         ///< why there are none, a sentence in the language spoken
};

/// Works out from the rule's own condition what repairs a breach of it: a card is moved to the nearest place where the rule lets it
/// stand and it can be carried out; a setting is put right; a card that is missing is put in as the pattern has it; one that must
/// not be is left out. Whether the rule then holds shows only when the changed plan is carried out.
Repair repair_of(const RepairShop& shop, const rules::Rule& rule, const rules::Verdict& verdict);

}
