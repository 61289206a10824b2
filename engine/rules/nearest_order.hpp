#pragma once

#include "rules/order_marks.hpp"

#include <vector>

namespace flapdoor::rules {

/// A card in an order that keeps every rule.
struct PlacedCard {
    int card = 0;
    bool is_moved = false;      ///< stood elsewhere; of a missing card: is put in
};

/// A legal order nearest to the answer: every card that need not move stays in its place among the others, the fewest are
/// moved or put in (`marks.moves` together with forbidden cards, which are left out). A card that came too early is put as
/// early as the rules allow, one that came too late or is missing just before what needs it.
/// @param marks  of this book and answer
/// Why it exists: a set of cards without a broken pair among them can stay, whatever the others do (see fewest_moves.hpp).
std::vector<PlacedCard> nearest_order(const OrderBook& book, const OrderAnswer& answer, const OrderMarks& marks);

}
