#pragma once

#include "window/stage/ui.hpp"

#include "site/bag_moves.hpp"

namespace flapdoor::window {

/// A bag from the side, as far as it is closed: how full, how much air, its neck, tape, loop; dust on its skin; the puff that
/// closing presses out.
struct BagDrawing {
    Box body;               ///< film around the debris
    float fill_y = 0.0F;    ///< height of the debris on the screen
};

/// Where the parts of the bag stand in a field of the screen. @param fill  0 to 1
BagDrawing bag_drawing(const Ui& ui, const Box& field, double fill);

void draw_bag_in_hand(Canvas canvas, const Ui& ui, const Box& field, const site::BagInHand& bag, const site::BagHandled& handled);

}
