#pragma once

#include "dust/clothing.hpp"
#include "site/site.hpp"

#include <vector>

namespace flapdoor::site {

/// Cells of floor that somebody at work reaches with feet, knees and sleeves: within 1 m of the place (judgment).
std::vector<std::size_t> floor_within_reach(const Site& site, std::size_t zone, plan::Point where);

/// Dust of floor gets onto the clothes of somebody who is busy on it for a while: a share of the free dust on those cells of
/// the person's zone, chips apart. Before the first dust nothing.
void soil_clothes(Site& site, Worker& who, const std::vector<std::size_t>& cells, dust::Stirring how, Time spell);

/// Everybody on the site sheds about where they stand, in the work room and outside.
void shed_clothes(Site& site, Time spell);

}
