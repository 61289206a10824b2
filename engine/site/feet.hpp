#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// One footstep: the sole takes dust up from what lies there, leaves some of its own, and whirls a little into the air.
void step_on(Site& site, Worker& who, std::size_t cell);

/// Walks to a place in the zone where the person is, around what stands in the way.
void walk_to(Site& site, Worker& who, plan::Point where);

/// A few steps here and there around a place while working: `steps` footfalls within `radius`.
void shuffle(Site& site, Worker& who, plan::Point around, Length radius, int steps);

/// Dust of the surfaces nearby that gets onto the clothes in a spell of work.
void soil_clothes(Site& site, Worker& who, Time spell);

}
