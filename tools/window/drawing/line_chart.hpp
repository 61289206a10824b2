#pragma once

#include "window/stage/ui.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace flapdoor::window {

/// A place on a chart, in the units of its axes.
struct ChartPoint {
    double x = 0.0;
    double y = 0.0;
};

/// One line of a chart. Lines differ by dash and strength as well as by color.
struct ChartLine {
    std::span<const ChartPoint> points;
    bool is_main = true;            ///< strong and whole; otherwise thin and dashed
};

struct ChartLook {
    double x_most = 1.0; ///< both axes run from 0
    double y_most = 1.0;
    std::string_view x_unit = {}; ///< behind the last figure of the axis
    std::string_view y_unit = {};
    std::optional<double> x_now = {}; ///< a dashed upright, and a dot on the main line
};

/// Lines over labeled axes. Draws nothing where there is no room.
void draw_line_chart(Canvas canvas, const Ui& ui, const Box& box, std::span<const ChartLine> lines, const ChartLook& look);

}
