#pragma once

#include "window/stage/canvas.hpp"

namespace flapdoor::window {

/// Our own few signs, drawn as lines and shapes.
enum class Icon : int {
    none,
    play,
    pause,
    to_start,
    back,
    forward,
    up,
    down,
    plus,
    minus,
    fit,
    check,
    cross,
    caution,
    info,
    eye,
    dust,
    repeat,
    grip,
    page,
    people,
    book,
    house,
    wall, ///< a picture thrown on a wall
};

/// @param size  side of the square it stands in, pixels
/// @param ground  what it lies on, for the parts that are cut out
void draw_icon(Canvas& canvas, Icon icon, Point center, float size, Color color, Color ground);

}
