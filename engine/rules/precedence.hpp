#pragma once

#include "rules/bit_matrix.hpp"

#include <utility>
#include <vector>

namespace flapdoor::rules {

/// Everything that follows from "first before second" pairs: `at(a, b)` when a must stand before b, named or implied.
BitMatrix closure(const BitMatrix& before);

/// The nodes of one cycle in order, each to stand before the next and the last before the first; empty when there is
/// none. Always the same cycle for the same relation.
std::vector<int> find_cycle(const BitMatrix& before);

}
