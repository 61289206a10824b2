#pragma once

#include "rules/bit_matrix.hpp"

#include <vector>

namespace flapdoor::rules {

/// Fewest cards that must be taken out and put back elsewhere so that every rule of order holds.
///
/// `broken.at(a, b)`: a must stand before b (named or implied), yet does not. The relation must be transitive, which it
/// is for any partial order against any sequence of time slots. Cards may stay where they are exactly when no two of
/// them form a broken pair, so the answer is the size of a maximum matching (Dilworth 1950; Fulkerson 1956): no search
/// over subsets. Checked against that search in tests/rules/fewest_moves_test.cpp.
int fewest_moves(const BitMatrix& broken);

/// One smallest set of cards to move, always the same one: the first in `tie_order` that help.
/// @param tie_order  every card once, those to be named rather first
/// @return           in tie order
std::vector<int> move_set(const BitMatrix& broken, const std::vector<int>& tie_order);

/// Every card that stands in some smallest set ("either H or M"), lowest first.
std::vector<int> could_move(const BitMatrix& broken);

}
