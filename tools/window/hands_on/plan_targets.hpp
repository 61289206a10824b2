#pragma once

#include "window/hands_on/plan_tools.hpp"

namespace flapdoor::window {

/// Things on the plan that a card names: each can be clicked; the one that is named is ringed and ticked.
PlanEdit play_targets(Ui& ui, const Box& window, Board& board, const PlanGround& ground, job::Step& step);

/// True when the card names a thing that stands on the plan.
bool has_targets(const job::Step& step);

}
