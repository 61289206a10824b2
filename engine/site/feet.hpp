#pragma once

#include "site/site.hpp"

#include <vector>

namespace flapdoor::site {

/// One footstep, by one shoe after the other: the sole takes dust up from what lies there, leaves some of its own, and whirls a
/// little into the air. The person stands there then.
void step_on(Site& site, Worker& who, std::size_t cell);

/// Footstep after footstep over some cells, to the last of them.
void walk_over(Site& site, Worker& who, const std::vector<std::size_t>& cells);

/// Walks to a place in the zone where the person is, around what stands in the way.
void walk_to(Site& site, Worker& who, plan::Point where);

/// A few steps here and there around a place while working: `steps` footfalls within `radius`.
void shuffle(Site& site, Worker& who, plan::Point around, Length radius, int steps);

}
