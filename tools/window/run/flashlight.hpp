#pragma once

#include "window/drawing/board.hpp"

namespace flapdoor::window {

/// A flashlight held low over the floor, as one is held to look for debris: the hand, and the spot that is looked at. Its reach
/// and spread are a picture, not a calculation; how little dust it shows is dust::light_factor's raking light.
struct Beam {
    PaperPoint hand;
    PaperPoint spot;

    /// The hand comes after the spot, as if drawn by an arm's length: the light falls the way one looks.
    void look_at(PaperPoint next);
    bool lights(PaperPoint p) const;

    friend bool operator==(const Beam&, const Beam&) = default;
};

/// A beam on that spot that comes from the south.
Beam beam_on(PaperPoint spot);

/// What the flashlight and its light take up on the plan.
PaperBox taken_by(const Beam& beam);

/// The flashlight in the hand and the edges of its light.
void draw_flashlight(Board& board, const Beam& beam);

}
