#pragma once

#include "job/work_plan.hpp"
#include "text/document.hpp"

#include <string>

namespace flapdoor::job {

/// A card as it stands in a plan file, and back: for whoever changes a card by the names of its keys.
text::Node card_node(const Card& card);
[[nodiscard]] Result<Card> card_from(const text::Node& node);

/// A plan as the file that reads back equal.
std::string plan_text(const WorkPlan& plan);

}
