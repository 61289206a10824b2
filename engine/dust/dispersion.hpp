#pragma once

#include "core/quantity.hpp"

namespace flapdoor::dust {

/// Eddy diffusivity of a room at rest, and around somebody at work (judgment inside the measured bands).
inline constexpr Diffusivity resting_room{0.005};
inline constexpr Diffusivity working_room{0.02};

/// Eddy diffusivity from the air change rate: K = L^2 (0.52 ACH + 0.31)/3600, L = V^(1/3), ACH in 1/h.
/// Source: coefficients of Cheng et al. 2011 from memory; its abstract gives 0.001 to 0.013 m2/s over two houses.
Diffusivity eddy_diffusivity(Volume room, Rate air_change);

/// Time for diffusion to even out a room of a length: L^2/(pi^2 K). Events that last longer may be treated as mixed.
Time mixing_time(Length room, Diffusivity eddy);

/// Chance that a parcel that diffused into a surface stays there, for a reflecting walk: (v_d - v_s)+ sqrt(pi dt/K),
/// 0 to 1. What gravity carries into the surface is counted by the settling move and must not be counted here again.
/// @param deposition  toward the surface
/// @param settling    its part by gravity: v_s at floors, 0 at walls
double sticking_probability(Speed deposition, Speed settling, Time step, Diffusivity eddy);

}
