#pragma once

#include "air/air_properties.hpp"

namespace flapdoor::air {

/// A level crack: how far apart its faces are, and how far the air has to go between them.
struct Crack {
    Length height;   ///< above 0
    Length depth;    ///< above 0
};

/// Mean velocity between the faces: dP = 12 mu z U/h^2 + 0.75 rho U^2 (laminar friction and ends), solved for U.
/// @param difference  above 0 Pa; insists
Speed crack_speed(const Crack& crack, Pressure difference, const Air& air);

/// Share of the dust that comes through: what settles on the lower face on the way stays there, 1 - v_s z/(h U), never
/// below 0. Measured (Liu & Nazaroff 2003, abstract): near 1 for 0.1-1 um at 0.25 mm or more and 4 Pa or more; this
/// formula is pessimistic near 1 um at 0.25 mm. Gaps of 5 mm and more (undercuts) pass everything up to 10 um.
double crack_penetration(const Crack& crack, Speed settling, Pressure difference, const Air& air);

}
