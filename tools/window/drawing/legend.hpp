#pragma once

#include "window/drawing/board.hpp"
#include "window/drawing/heat_map.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace flapdoor::window {

/// Words of the legend, translated by the caller.
struct LegendWords {
    std::string_view what = "Lead on the floor";
    std::string_view unit = "ug/ft2";
    std::string_view caution = "training model, not a clearance prediction";
};

/// Scale of the heat map with decades, unit and the caution that stands beside every loading. A pointer shows where
/// `reading` lies on it.
/// @return height it took, pixels
float draw_legend(Canvas canvas, const Ui& ui, Point low, float width, const HeatScale& scale, const Ramp& ramp, const LegendWords& words,
                  std::optional<double> reading = {});

/// The number at the pointer on an opaque slip beside it.
void draw_reading(Canvas canvas, const Ui& ui, Point pointer, double loading, const LegendWords& words);

/// Words on an opaque slip beside the pointer, kept on the screen: the first line strong.
/// @param side  to which it goes where there is room: right and below at (1, 1)
void draw_slip(Canvas canvas, const Ui& ui, Point pointer, std::string_view head, std::span<const std::string> lines, Point side = {1.0F, 1.0F});

/// Two significant digits, ug/ft2: `12`, `3400`; `< 1` for less than one, `0` for nothing.
std::string loading_text(double loading);

}
