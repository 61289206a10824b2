#pragma once

#include "window/stage/ui.hpp"

#include <string_view>
#include <utility>

namespace flapdoor::window {

struct PanelLook {
    std::string_view title = {};
    bool is_sheet = true; ///< on a sheet of its own; otherwise straight on the paper
    bool can_scroll = true;
    float padding = 16.0F; ///< at 100 %
};

/// Draws the sheet and its title, and opens its flow.
void begin_panel(Ui& ui, std::string_view name, const Box& box, const PanelLook& look);

/// A piece of the screen: `panel(ui, "steps", box, {.title = "Steps"}, [&] { ... })`.
template <class Body>
void panel(Ui& ui, std::string_view name, const Box& box, const PanelLook& look, Body&& body)
{
    begin_panel(ui, name, box, look);
    std::forward<Body>(body)();
    ui.close_panel();
}

/// A sheet above everything that takes all input until the caller stops showing it. Escape and its close button ask for
/// that: @return false when it should go.
bool begin_dialog(Ui& ui, std::string_view name, std::string_view title, Point size_at_100_percent);

template <class Body>
bool dialog(Ui& ui, std::string_view name, std::string_view title, Point size_at_100_percent, Body&& body)
{
    const bool stays = begin_dialog(ui, name, title, size_at_100_percent);
    std::forward<Body>(body)();
    ui.close_layer();
    return stays;
}

}
