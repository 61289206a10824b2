#pragma once

#include "window/base/color.hpp"

#include <string_view>
#include <vector>

namespace flapdoor::window {

/// The colors of the window: a drafting sheet. Warm paper, slate ink, one accent, amber where care is due. Nothing is
/// told by color alone; every state also has a word and a shape.
struct Theme {
    Color paper;        ///< what lies behind everything
    Color sheet;        ///< panels and cards
    Color field;        ///< where one writes or slides
    Color ink;          ///< text and the strong lines of a drawing
    Color muted;        ///< second-rank text
    Color line;         ///< edges of controls
    Color hairline;     ///< rules between things; carries no meaning
    Color accent;       ///< the one action of a panel, what is chosen
    Color accent_deep;  ///< the accent under the pointer
    Color accent_tint;  ///< ground of what is chosen
    Color on_accent;    ///< text on the accent
    Color caution;      ///< text and edges where care is due
    Color caution_fill; ///< ground of a caution mark
    Color caution_tint; ///< ground of a caution card
    Color focus;        ///< ring around what the keyboard is on
    Color focus_gap;    ///< gap between the ring and the thing
    Color wall;         ///< cut walls on the plan
    Color floor;        ///< bare floor on the plan
    Color grid;         ///< one-foot squares of the plan
    Color thing;        ///< furniture and fixtures
    Color glass;        ///< panes
    Color sheeting;     ///< hatch of plastic sheeting
    Color tape;         ///< taped edges
};

Theme drafting_theme();

/// A pair of colors that the window lays on each other, and the contrast it owes the eye.
struct ContrastPromise {
    std::string_view what;
    Color front;
    Color ground;
    double least; ///< 4.5 for text, 3.0 for edges and marks that carry meaning (WCAG 2.2, 1.4.3 and 1.4.11)
};

/// Every pair in use. A widget that lays a new pair adds its line here; the tests check them all.
std::vector<ContrastPromise> contrast_promises(const Theme& theme);

}
