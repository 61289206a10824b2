#pragma once

#include "window/drawing/board.hpp"

#include "drill/film.hpp"
#include "job/scenario.hpp"

namespace flapdoor::window {

/// A door, window or register as it stands: open or shut, covered, with its flap door.
void draw_opening(Board& board, const job::Scenario& scenario, const job::Opening& opening, const drill::OpeningShot& shot);

}
