#pragma once

#include "job/building.hpp"
#include "plan/rect.hpp"

namespace flapdoor::job {

/// The floor of a zone.
plan::Rect floor_of(const Zone& zone);

/// A stretch of a zone's wall as a strip of the plan.
/// @param from    along the wall, from its west or south end
/// @param into    how far the strip reaches into the zone
/// @param beyond  how far it reaches to the other side
plan::Rect wall_strip(const Zone& zone, WallSide wall, Length from, Length width, Length into, Length beyond = {});

/// Length of one of a zone's four walls.
Length length_of(const Zone& zone, WallSide wall);

}
