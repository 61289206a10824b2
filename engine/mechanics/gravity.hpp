#pragma once

#include "core/quantity.hpp"

namespace flapdoor::mechanics {

using Acceleration = Quantity<1, -2>;
using Force = Quantity<0, 0, 1>;
using Torque = Quantity<1, 0, 1>;
using Inertia = Quantity<1, 2, 1>;   ///< kg m2

/// Standard gravity (exact by convention, CGPM 1901).
inline constexpr Acceleration gravity{9.80665};

}
