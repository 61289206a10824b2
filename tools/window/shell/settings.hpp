#pragma once

#include "text/language.hpp"

namespace flapdoor::window {

/// What a person has chosen for all screens.
struct Settings {
    bool keeps_still = false;   ///< reduced motion: no points, nobody glides
    bool is_projected = false;  ///< large type, for a wall
    float scale_at_desk = 1.0F; ///< text size to go back to after projecting
    bool shows_help = false;    ///< the sheet of keys lies on top
    bool wants_to_quit = false;
};

/// Large type for a wall, or back to the size at the desk.
class Ui;
void project(Ui& ui, Settings& settings, bool is_projected);

/// The other language of the two.
void change_language();

}
