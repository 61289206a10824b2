#pragma once

#include "mechanics/gravity.hpp"

namespace flapdoor::air {

using mechanics::Acceleration;
using mechanics::gravity;

/// The state of a body of air. Humidity is left out: below 1 % on density and viscosity at 20 C.
struct Air {
    Temperature temperature = celsius(20.0);   ///< 250 to 320 K
    Pressure pressure{101325.0};               ///< absolute, 70 to 105 kPa

    friend auto operator<=>(const Air&, const Air&) = default;
};

/// Dry air as an ideal gas, 287.05 J/(kg K).
Density density(const Air& air);

/// Dynamic viscosity by Sutherland's law: 1.83245e-5 Pa s at 296.15 K, S = 110.4 K (constants of ISO 15900, read in a
/// University of Tartu teaching note).
Viscosity viscosity(const Air& air);

/// Mean free path of the molecules: 67.3 nm at 296.15 K and 101.3 kPa (same note). Grows as pressure falls.
Length mean_free_path(const Air& air);

/// Viscosity over density.
Diffusivity kinematic_viscosity(const Air& air);

}
