#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// Dust of one class that an air path takes along: to another zone, outdoors, or through duct and filter into the house.
/// @param amount  what gets through the path's opening, all of it
void carry_off(Site& site, const AirPath& path, dust::Holding from, dust::SizeClass k, Amount amount);

/// Share of what gets through a path that reaches the zone beyond, the rest staying in duct and filter; 0 to the outdoors.
double arriving_share(const Site& site, const AirPath& path, dust::SizeClass k);

}
