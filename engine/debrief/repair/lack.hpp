#pragma once

#include "debrief/repair/plan_edit.hpp"
#include "site/site.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// What would let a refused card be carried out, of what one card more brings about.
struct Lack {
    int card = -1;                              ///< its number in the plan that was carried out
    std::vector<std::string> left_outside;      ///< supplies that nobody brought in
    std::vector<job::PersonId> not_inside;      ///< people who would have to enter first
};

/// @param site  as it is when the card is refused
/// @param card  with its number in the plan; must be refused
Lack lack_of(const site::Site& site, const job::Card& card, int number);

/// Supplies that nobody brought inside are brought: an edit of the card that brings things, where it comes before card `place` of the plan.
/// Empty when all are there.
std::vector<PlanEdit> staging(const job::WorkPlan& plan, const std::vector<std::string>& supplies, int place);

/// Edits of a plan that make up for what the changed plan lacked, to stand before the edits that changed it.
/// @param changed  of `plan`, in which the card was refused
std::vector<PlanEdit> made_up(const Lack& lack, const job::WorkPlan& plan, const EditedPlan& changed);

}
