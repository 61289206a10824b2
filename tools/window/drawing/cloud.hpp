#pragma once

#include "window/base/picture.hpp"
#include "window/drawing/board.hpp"
#include "window/drawing/paper.hpp"

#include <span>

namespace flapdoor::window {

/// Airborne parcels as soft dots on a clear picture of the part of the paper in `part`: the darker, the more of them lie
/// on each other. Counted by the processor; 100,000 dots take a few milliseconds.
/// @param width, height  of the picture, above 0
/// @param weight  opacity of the middle of one dot, above 0, up to 1
Picture cloud_picture(std::span<const PaperPoint> parcels, const PaperBox& part, int width, int height, Color color, double weight = 0.45);

/// One parcel as a dot that reads on any ground. Six corners: hundreds of them are drawn each frame.
/// @param radius  pixels
void draw_parcel(Board& board, Point center, float radius);

}
