#pragma once

#include "window/run/reading.hpp"
#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

#include <optional>
#include <string_view>

namespace flapdoor::window {

/// "What is there", to be said.
std::string_view view_title(ViewKind view);

/// Width of the column beside the plan, pixels.
float width_of_block(const Ui& ui, bool is_wide);

/// The column at the right of a drafting sheet: which view the drawing shows, how to read it, zoom, scale, signs.
/// @param reading  marked on the legend
void title_block(Ui& ui, const Box& box, const Story& story, ScreenState& state, const std::optional<Reading>& reading);

/// The same on a small screen: the legend only, and its controls in a bar above the plan.
void small_block(Ui& ui, const Box& box, const Story& story, ScreenState& state, const std::optional<Reading>& reading);
void small_toolbar(Ui& ui, const Box& box, ScreenState& state);

}
