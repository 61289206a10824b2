#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// The bag of that name, opened if there is none yet.
Bag& start_bag(Site& site, const job::BagId& id, bool is_heavy_duty);

/// The outside of a bag takes on dust from where it stands.
void dust_the_skin(Site& site, Bag& bag);

}
