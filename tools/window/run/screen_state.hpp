#pragma once

#include "window/hands_on/flap_view.hpp"
#include "window/run/dust_pictures.hpp"
#include "window/run/flashlight.hpp"
#include "window/run/layout.hpp"
#include "window/run/playback.hpp"
#include "window/run/site_plan.hpp"
#include "window/run/strip.hpp"
#include "window/run/view_kind.hpp"
#include "window/shell/settings.hpp"

#include <functional>
#include <optional>

namespace flapdoor::window {

/// What the large drawing shows.
enum class PlanMode : int {
    plan,       ///< the site at the time played
    swipe,      ///< the floor at two moments, a divider between
    flap,       ///< the flap door in section while somebody walks through
    compare     ///< beside the careful run on the same seed
};

/// A place that was asked for: where a fault happened.
struct ShownPlace {
    PaperPoint at;
    std::size_t fault = 0;  ///< in Report::faults
    Time time{};            ///< shown while the run stands there
};

/// What a person has chosen on the screen of a run, and what it remembers between frames.
struct ScreenState : Settings {
    ViewKind view = ViewKind::there;
    Page page = Page::steps;  ///< on a small screen also plan and section
    bool has_way_back = false; ///< wants_to_quit then means: back to the screen before
    std::optional<PaperView> plan_view;       ///< nothing: fit
    bool shows_whole_plan = false;            ///< what "fit" fits
    Box plan_window;                          ///< the view was made for; another one makes it anew
    std::optional<std::size_t> card_in_sight; ///< the list was last scrolled to
    DustPictures dust;
    PlanMode mode = PlanMode::plan;
    std::optional<ShownPlace> shown_place;
    Strip strip = Strip::section;
    bool asks_for_strip = false; ///< a wall was chosen on the plan: the strip is to be seen
    FlapView strip_flap;         ///< of the flap door on the strip
    bool has_flashlight = false; ///< on, in the view of what one could see
    std::optional<Beam> beam;    ///< where it was last held
    Point beam_mouse;            ///< where the pointer was then
    float dragged = 0.0F;        ///< pixels, since the button went down on a wall
    std::vector<Box> on_top;     ///< what lay on the plan in the frame before: no name goes there
    /// Goes over the plan, in its panel: what can be set there. Empty: nothing.
    std::function<void(Ui&, const Box& window, const PaperView& view)> on_plan = {};
};

}
