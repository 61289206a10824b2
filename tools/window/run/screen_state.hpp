#pragma once

#include "window/run/dust_pictures.hpp"
#include "window/run/layout.hpp"
#include "window/run/playback.hpp"
#include "window/run/site_plan.hpp"
#include "window/run/view_kind.hpp"

#include <optional>

namespace flapdoor::window {

/// What a person has chosen on the screen of a run, and what it remembers between frames.
struct ScreenState {
    ViewKind view = ViewKind::there;
    Page page = Page::steps;  ///< on a small screen also plan and section
    bool keeps_still = false; ///< reduced motion: no points, nobody glides
    bool shows_help = false;
    bool wants_to_quit = false;
    std::optional<PaperView> plan_view;       ///< nothing: fit
    bool shows_whole_plan = false;            ///< what "fit" fits
    Box plan_window;                          ///< the view was made for; another one makes it anew
    std::optional<std::size_t> card_in_sight; ///< the list was last scrolled to
    DustPictures dust;
};

}
