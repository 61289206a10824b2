#pragma once

#include "window/drawing/board.hpp"
#include "window/drawing/name_places.hpp"
#include "window/run/dust_pictures.hpp"
#include "window/run/moment.hpp"
#include "window/run/view_kind.hpp"

#include <optional>
#include <vector>

namespace flapdoor::window {

struct PlanLook {
    Box window; ///< the part of the screen that the plan is drawn in
    ViewKind view = ViewKind::there;
    bool shows_points = true; ///< false for whoever asks for little motion
    std::vector<Box> taken = {}; ///< parts of the screen that something else lies on: no name goes there
    std::optional<job::WallSide> chosen_wall = {}; ///< of the work room, marked
};

/// Everything that is there at a moment, seen from above.
/// @param dust  one picture a zone, for the views on surfaces
/// @return  the names on it, none of which lies on another
std::vector<PlacedName> draw_site(Board& board, const Story& story, const Moment& moment, const PlanLook& look, const std::vector<PictureId>& dust);

/// The place as found, in few lines: for a picture the size of a card.
void draw_site_in_small(Board& board, const job::Scenario& scenario);

/// The same before the run is known: the place as found, without people and dust.
std::vector<PlacedName> draw_empty_site(Board& board, const job::Scenario& scenario, const Box& window);

}
