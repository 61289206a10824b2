#pragma once

#include "window/drawing/paper.hpp"
#include "window/drawing/walls.hpp"

#include "job/scenario.hpp"

#include <vector>

namespace flapdoor::window {

inline constexpr double wall_thickness = 0.12; // m; scenarios tell none, drawings need one

/// An opening from jamb to jamb on its wall, so run through that its zone lies to the left.
PlanOpening plan_opening(const job::Scenario& scenario, const job::Opening& opening);

/// A strip along an opening on the zone's side of the wall (or beyond it), `depth` wide, `off` meters away from the wall's
/// middle.
PaperBox strip_along(const PlanOpening& opening, double off, double depth, bool is_beyond = false);

/// The walls of all zones.
std::vector<PlanWall> plan_walls(const std::vector<job::Zone>& zones);

/// The opening through which one enters the work room from a passage, or null.
const job::Opening* way_in(const job::Scenario& scenario);

}
