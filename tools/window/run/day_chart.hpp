#pragma once

#include "window/stage/ui.hpp"

#include "core/quantity.hpp"

#include <span>
#include <string_view>

namespace flapdoor::window {

struct DayPoint {
    Time at{};
    double level = 0.0;
};

struct DayChartLook {
    Time start{}, end{}, now{}; ///< time of day
    double least = 0.0;         ///< above 0: levels by decades from here; 0: even steps from 0
    double most = 1.0;
};

/// A level over the day with both axes labeled: what has been as a strong line, what is to come as a thin one.
void draw_day_chart(Canvas canvas, const Ui& ui, const Box& box, std::span<const DayPoint> points, const DayChartLook& look);

}
