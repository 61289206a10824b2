#pragma once

#include "text/axis.hpp"
#include "text/markup.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::text {

/// From where to where most results lie.
struct Band {
    double low = 0.0, high = 0.0;
};

struct Bar {
    std::string label;
    double value = 0.0;
    std::string shown;              ///< the value as people read it, `40 ug/ft2`
    std::optional<Band> band;       ///< drawn as a whisker
    bool is_marked = false;         ///< hatched in the caution color: it is over its limit, say so in `shown` too
};

/// A level to compare with: a line across the bars with its name.
struct Level {
    double value = 0.0;
    std::string label;
};

struct BarChart {
    std::string title;
    std::string axis_title;         ///< quantity and unit, "lead on the floor, ug/ft2"
    bool is_log = false;
    std::vector<Bar> bars;
    std::vector<Level> levels;
    double width = 720.0;           ///< px
};

/// Lying bars with their labels, values, whiskers, ticks and levels. Insists on finite values, and on none below zero.
Element bar_chart(const BarChart& chart);

/// The color ramp of dust maps with ticks at the axis' own; a value on the map is looked up here.
Element dust_legend(const Axis& axis, const std::string& title, double width = 360.0);

}
