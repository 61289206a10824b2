#pragma once

#include "window/drawing/board.hpp"
#include "window/drawing/name_places.hpp"
#include "window/run/moment.hpp"
#include "window/run/room_wall.hpp"
#include "window/run/view_kind.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::window {

struct ElevationLook {
    Box window; ///< the part of the screen that it is drawn in: names stay within it
    ViewKind view = ViewKind::there;
    bool shows_points = true; ///< airborne parcels at their height
};

/// Something that an elevation shows, and where: x to the right along the wall, y up, in meters.
struct ElevationThing {
    std::string id; ///< of the opening, part, sill, thing or counter
    std::string_view title;
    PaperBox box;
};

/// Openings in a wall, first to last from the left.
std::vector<ElevationThing> openings_in(const RoomWall& wall, const job::Scenario& scenario);
/// The painted parts of it that are worked on. A stretch of wall is as tall as its area asks for, about the height of the work.
std::vector<ElevationThing> parts_of(const RoomWall& wall, const job::Scenario& scenario);

/// Lead on the wall at a place of its elevation, ug/ft2: of the panel there. Nothing beside the wall.
std::optional<double> lead_on_wall(const drill::Frame& frame, const RoomWall& wall, PaperPoint at);

/// One wall of the work room from inside: its doors, windows and registers as they stand, the parts that are worked on, what stands
/// against it, sheeting and tape, people; heights in feet. Dust at its heights, on the scale of the plan's view: on the panels of the
/// wall, at its foot, on sills and on things, and parcels in the air.
/// @return  the names on it
std::vector<PlacedName> draw_wall_elevation(Board& board, const Story& story, const Moment& moment, const RoomWall& wall, const ElevationLook& look);

}
