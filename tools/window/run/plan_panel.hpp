#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The plan with its title block: which view, legend, scale, zoom; to pan by dragging, to zoom by the wheel.
/// @param is_wide  false on a small screen: the title block shrinks to the legend
void plan_panel(Ui& ui, const Box& box, bool is_wide, const Story& story, const Moment& moment, ScreenState& state);

/// The flashlight on or off; on brings the view that it belongs to.
void toggle_flashlight(ScreenState& state);

/// Comes closer about the middle of the plan. @param factor  above 1 comes closer
void zoom_plan(ScreenState& state, double factor);
/// The near part again; asked twice, the whole plan.
void fit_plan(ScreenState& state);

}
