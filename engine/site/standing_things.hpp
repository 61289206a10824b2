#pragma once

#include "site/site.hpp"

#include <vector>

namespace flapdoor::site {

/// What stands on the floor of a zone now, as rectangles of whole cells: furniture that was not moved out, counters.
std::vector<plan::Rect> standing_things(const Site& site, std::size_t zone);

}
