#pragma once

#include "debrief/repair/plan_edit.hpp"

#include <vector>

namespace flapdoor::debrief {

/// The other way round: the edits that put into the reference plan the mistake which the given edits would take out of a plan. A card
/// that comes too early or late there does so here too, a setting is set as it is there, what is missing there is left out. Empty
/// where the reference plan has no such card.
/// @param with_whole_cards  cards that are set get all the settings of the plan's card, not only those that the edits name: a machine
///                          without its shroud is no mistake while the work is done by hand
std::vector<PlanEdit> mistake_in(const job::WorkPlan& reference, const job::WorkPlan& plan, const std::vector<PlanEdit>& edits, bool with_whole_cards = false);

}
