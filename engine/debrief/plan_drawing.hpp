#pragma once

#include "drill/film.hpp"
#include "job/scenario.hpp"
#include "plan/rect.hpp"
#include "text/markup.hpp"
#include "text/svg.hpp"

namespace flapdoor::debrief {

/// Where the plan stands in a drawing, north up.
struct PlanScale {
    plan::Rect window;              ///< part of the plan that is shown
    double left = 0.0, top = 0.0;   ///< px of its north-west corner
    double per_meter = 60.0;        ///< px

    text::svg::Point at(plan::Point p) const;
    /// The part of a rectangle inside the window, as a shape; without size where nothing of it shows.
    text::Element rect(const plan::Rect& part) const;
    bool shows(const plan::Rect& part) const;
    double width() const { return window.width.si * per_meter; }
    double height() const { return window.depth.si * per_meter; }
};

/// Walls, openings, furniture and names as ink lines, with the containment as it stood in the frame.
text::Element plan_drawing(const job::Scenario& scenario, const drill::Frame& frame, const plan::Raster& work_room, const PlanScale& scale);

/// A bar of whole feet and an arrow to the north, `width` px wide and 30 px high, with its upper left corner at a point.
text::Element scale_and_north(const PlanScale& scale, text::svg::Point corner, double width);

/// What the signs of a plan mean, in lines of at most `width` px. @param height  set to the px it takes
text::Element plan_key(text::svg::Point corner, double width, double& height);

}
