#pragma once

#include "job/work_plan.hpp"

#include <cstdint>
#include <vector>

namespace flapdoor::job {

/// What a card is, however it is set and wherever it stands: its kind and its label, or its kind and the things it is about where
/// it has no label. Supplies, people and settings do not count. Several cards of a plan may have one key.
std::uint64_t card_key(const Card& card);

/// What a card is about, whatever its label: its kind and the things it is about. Bags, which a plan names itself, do not count.
std::uint64_t subject_key(const Card& card);

/// For each card of the first plan the card of the second that is about the same, the n-th of its kind and things to the n-th; -1
/// where there is none.
std::vector<int> cards_in_common(const WorkPlan& first, const WorkPlan& second);

}
