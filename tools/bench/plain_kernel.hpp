#pragma once

#include "dust/step_table.hpp"

namespace flapdoor::bench {

/// The arithmetic of dust::advance written down plainly, a draw at a time: the yardstick for its speed, and a second opinion
/// on its result, which must be the same to the bit.
/// @return  parcel-steps made
std::uint64_t advance_plainly(dust::Cloud& cloud, const dust::StepTable& table, std::uint64_t seed);

}
