#pragma once

#include "job/steps/vacuum_walls.hpp"
#include "site/cleaning.hpp"
#include "site/effects.hpp"

#include <functional>

namespace flapdoor::site {

/// Goes over the walls of the work room band by band. What is knocked loose falls on the band below and on the floor, so
/// the order decides what stays.
void clean_walls(Site& site, const Team& by, job::WallOrder order, const std::function<void(Site&, const Part&)>& clean);

}
