#pragma once

#include "window/run/room_wall.hpp"
#include "window/stage/ui.hpp"

#include <optional>

namespace flapdoor::window {

/// What the strip below the plan shows.
enum class Strip : int {
    section, ///< the cut through work room and passage
    north,   ///< a wall of the work room from inside
    east,
    south,
    west,
    flap     ///< the flap door in section while somebody walks through
};

std::optional<job::WallSide> wall_on(Strip strip);
Strip strip_of(job::WallSide side);

/// The next one, or the one before; the flap door only while one hangs.
Strip stepped(Strip strip, int by, bool has_flap);

/// What the strip shows, as its title says it: "North wall from inside; heights in feet".
std::string_view title_of(Strip strip);

/// A key plan: the four walls of the work room to be pressed, and below it the section and the flap door.
void strip_chooser(Ui& ui, Box box, Strip& strip, bool has_flap);
/// Width it asks for, pixels.
float chooser_width(const Ui& ui, const Canvas& canvas);

}
