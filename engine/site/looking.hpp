#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// Chance-free coverage of a patch by what lies free on it: the share of its area that dust hides.
double coverage(const Surface& surface, std::size_t patch);

/// Looks over every level surface of the work area and the strip beyond: does anybody notice dust or chips?
/// @param contrast_light  light factor, above 0: below 1 shows more, above 1 less
/// @return  places where something was seen, as spots
std::vector<Spot> visible_dust(Site& site, double contrast_light);

/// Makes the list of things to wipe: each sill, each counter section, each section of bare floor in the work area.
/// @param sections  into how many the floor is divided; 0 asks the rule
std::vector<Item> items_to_verify(const Site& site, int sections);

/// One verification wipe with a wet cloth.
/// @return  true when the cloth comes up no darker than the card
bool cloth_matches(Site& site, Item& item);

}
