#pragma once

#include "dust/step_table.hpp"

#include <cstddef>
#include <cstdint>

namespace flapdoor::dust {

/// Has this processor what carrying eight parcels side by side takes (AVX2)?
bool can_carry_eight();

/// Parcels [begin, end) of the cloud through one spell, eight side by side. Where a lane meets what is rare (another cell on
/// its way with the air, two cells in one step, a wall that may keep it, its fate), take_step or plain code does that lane.
/// Insists that the processor can.
/// @return  parcel-steps made
std::uint64_t carry_eight(Cloud& cloud, const StepTable& table, std::uint64_t seed, std::size_t begin, std::size_t end);

}
