#pragma once

#include "rules/order_task.hpp"

#include <optional>
#include <vector>

namespace flapdoor::rules {

/// Why a card may not come next: another one has to stand before it and is not done yet.
struct Hindrance {
    int before = -1;        ///< the card that has to come first
    int rule = -1;          ///< the heaviest rule that asks it; -1 when it only follows from several
};

/// Asks whether a card may legally come next after those done so far. A card may when nothing that has to stand before it
/// is still to be done, by a rule or by what follows from several.
/// @param is_done  one flag a card of the task; insists
/// @param card     not done yet; insists
std::optional<Hindrance> hindrance(const OrderBook& book, const std::vector<bool>& is_done, int card);

}
