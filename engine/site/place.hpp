#pragma once

#include "job/scenario.hpp"
#include "plan/rect.hpp"

namespace flapdoor::site {

/// The floor of a zone.
plan::Rect footprint(const job::Zone& zone);

/// A stretch of a zone's wall reaching `depth` into the zone.
plan::Rect along_wall(const job::Zone& zone, job::WallSide wall, Length from, Length width, Length depth);

/// Where a worked component stands: the stretch of wall it takes up, as a line on the plan.
plan::Rect footprint(const job::Scenario& scenario, const job::Component& component);

plan::Rect footprint(const job::Scenario& scenario, const job::Sill& sill);

/// Middle of an opening on its wall.
plan::Point middle(const job::Zone& zone, const job::Opening& opening);

}
