#pragma once

#include "window/drawing/paper.hpp"

#include "job/scenario.hpp"

#include <array>
#include <string_view>

namespace flapdoor::window {

inline constexpr std::array<job::WallSide, 4> wall_sides{job::WallSide::north, job::WallSide::east, job::WallSide::south, job::WallSide::west}; ///< as one turns to the right

/// A wall of the work room as one sees it who stands in the room and looks at it.
struct RoomWall {
    job::WallSide side = job::WallSide::north;
    PaperPoint left, right; ///< its ends on the plan, at the face
    double ceiling = 2.4;   ///< m

    double width() const { return distance(left, right); }
    double across(PaperPoint p) const; ///< m to the right of its left end
    double off(PaperPoint p) const;    ///< m away from it into the room
};

RoomWall room_wall(const job::Scenario& scenario, job::WallSide side);

/// True for an opening of the work room or of the zone behind that lies in this wall.
bool has_opening(const RoomWall& wall, const job::Scenario& scenario, const job::Opening& opening);

/// "North wall", to be said.
std::string_view wall_title(job::WallSide side);

/// "north", stable, for names of controls.
std::string_view wall_word(job::WallSide side);

}
