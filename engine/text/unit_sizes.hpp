#pragma once

#include "core/quantity.hpp"

/// Customary units in SI, for reading and for showing them.
namespace flapdoor::text {

inline constexpr double foot = meters_per_foot;
inline constexpr double inch = 0.0254;
inline constexpr double square_foot = foot * foot;
inline constexpr double cubic_foot = foot * foot * foot;
inline constexpr double pound = 0.45359237;             // exact by definition
inline constexpr double gallon = 3.785411784e-3;        // US liquid, exact by definition
inline constexpr double inch_of_water = 249.08891;      // conventional, 4 C

}
