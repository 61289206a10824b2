#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// Dust of one class that an air path takes along: to another zone, outdoors, or through duct and filter into the house.
/// @param amount  what gets through the path's opening, all of it
void carry_off(Site& site, const AirPath& path, dust::Holding from, dust::SizeClass k, Amount amount);

/// Share of what gets through a path that reaches the zone beyond, the rest staying in duct and filter; 0 to the outdoors.
double arriving_share(const Site& site, const AirPath& path, dust::SizeClass k);

/// The blower's round of the house: air that it draws out of the rooms beyond the work room and blows back through duct and filter.
/// The work room has registers of its own; closets have none.
struct HouseRound {
    Rate rate{};                    ///< of the air of each room served; 0 while the blower stands still
    dust::PerClass<double> in_duct{}, in_filter{};   ///< shares of the dust that stay there
};
HouseRound house_round(const Site& site);
bool is_served(const Site& site, std::size_t zone);

}
