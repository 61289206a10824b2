#pragma once

#include "air/air_properties.hpp"
#include "dust/size_class.hpp"

namespace flapdoor::dust {

using air::Air;

/// Density of the sphere that an aerodynamic diameter speaks of.
inline constexpr Density unit_density{1000.0};

/// Settling speed by Stokes' law with slip: 4 % high at 50 um, 20 % at 100 um, 73 % at 200 um.
Speed stokes_speed(Length d_ae, const Air& air);

/// Terminal settling speed of a sphere in still air: Stokes with slip for small ones, the drag curve beyond.
/// @param d_ae  aerodynamic diameter (unit density), 0.01 to 2000 um; insists
/// @return      positive downward
/// Source: Clift, Grace & Weber 1978 (drag), ISO 15900 (slip); both from memory. Checked in tests/published/settling_test.cpp.
Speed settling_speed(Length d_ae, const Air& air);

/// settling_speed at the typical diameter of each class. Work it out once and keep it.
PerClass<Speed> settling_speeds(const Air& air);

/// How long a particle keeps a velocity of its own: rho d^2 Cc/(18 mu). 31 ms at 100 um, so dust moves with the air.
Time relaxation_time(Length d_ae, const Air& air);

/// Einstein's diffusivity kB T Cc/(3 pi mu d).
/// @param diameter  that of the body itself; for submicron dust d_ae stands for it
Diffusivity brownian_diffusivity(Length diameter, const Air& air);

/// Kinematic viscosity over Brownian diffusivity.
double schmidt_number(Length diameter, const Air& air);

/// Diameter of the unit-density sphere that settles as fast as a body of another density and shape (Stokes range).
/// @param volume_diameter  of the sphere of the same volume
/// @param body             density of the material; paint dust 2500 kg/m3, 1500 to 4500 (judgment)
/// @param shape_factor     dynamic shape factor, 1 to 1.5; paint dust 1.2 (judgment)
Length aerodynamic_diameter(Length volume_diameter, Density body, double shape_factor, const Air& air);

}
