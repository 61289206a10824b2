#pragma once

#include "dust/settling.hpp"

namespace flapdoor::dust {

/// How fast dust leaves the air at each kind of surface: flux over concentration.
struct DepositionSpeeds {
    Speed floor;     ///< and every other surface that looks up: sills, furniture tops, ledges
    Speed wall;
    Speed ceiling;
};

/// Share of the settling speed that walls get at least (judgment): measured wall deposition of 0.9-9 um rises with size
/// (Lai & Nazaroff 2005, abstract) where smooth-wall theory falls.
inline constexpr double wall_share = 0.01;

/// Friction velocity of room air: 0.3 to 3 cm/s (from memory), usual 1.
inline constexpr Speed usual_friction_velocity{0.01};

/// Resistance of the layer beyond 4.3 wall units, where eddies alone carry: the integral of 1/nu_t+ from 4.3 to 30.
inline constexpr double outer_layer_resistance = 39.0;

/// The diffusion resistance I of the three-layer model; the speed of a vertical wall is u*/I.
double boundary_resistance(Length diameter, Speed friction_velocity, const Air& air);

/// Three-layer model of a smooth room: Brownian and eddy diffusion with settling. Identity: floor - ceiling = settling.
/// Source: Lai & Nazaroff 2000, J Aerosol Sci 31:463-476 (from memory; algebra rederived, checked by integration).
DepositionSpeeds smooth_room_deposition(Length d_ae, Speed friction_velocity, const Air& air);

/// What the simulation uses for a class: floor = settling speed, wall = 1 % of it, ceiling nothing. Within 1 % of the
/// model above on floors from 1 um up; too slow below, which no lead mass depends on.
DepositionSpeeds deposition_speeds(SizeClass size, const Air& air);

/// Surfaces of a room that see its air.
struct RoomSurfaces {
    Area floor;
    Area wall;
    Area ceiling;
    Volume volume;   ///< above 0; insists
};

/// First-order loss from a stirred room: sum of speed times area, over the volume.
Rate room_loss_rate(const DepositionSpeeds& speeds, const RoomSurfaces& room);

/// The same in a room people live in: at least 0.25/h, times a factor for furniture.
/// @param furnishing  1 (bare) to 2.5 (furnished) (judgment on Thatcher et al. 2002 and Howard-Reed et al., abstracts)
Rate furnished_loss_rate(Rate smooth, double furnishing);

}
