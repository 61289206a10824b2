#pragma once

#include "air/air_properties.hpp"

namespace flapdoor::air {

/// Pressure that a column of warm air adds at its top, compared with the air beside it: (rho_out - rho_in) g h.
/// Positive when the inside is warmer (air leaves at the top).
Pressure stack_pressure(const Air& inside, const Air& outside, Length height);

}
