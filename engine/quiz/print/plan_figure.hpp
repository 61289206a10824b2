#pragma once

#include "quiz/kinds/point_at_plan.hpp"
#include "text/markup.hpp"

namespace flapdoor::quiz {

/// The part of the plan that is shown: the work room, passages and closets, and every place that may be pointed at.
plan::Rect plan_window(const PointAtPlan& asked);

/// The drill's plan, north up, with a letter at each region.
text::Element plan_figure(const PointAtPlan& asked, double width);

}
