#pragma once

#include "window/drawing/paper.hpp"

#include "job/scenario.hpp"

namespace flapdoor::window {

inline constexpr double room_for_measures = 0.75; ///< m around a plan

PaperBox grown(const PaperBox& box, double by);
PaperBox footprint_of(const job::Object& object);

/// The building part that is worked in, with the zones that border on the work room: what one wants to see first.
/// @param room_around  m on each side
PaperBox near_part(const job::Scenario& scenario, double room_around = room_for_measures);
PaperBox whole_plan(const job::Scenario& scenario);

/// The scale that fits `near`, moved so that as much of `whole` as possible is seen besides.
PaperView comfortable_view(const PaperBox& near, const PaperBox& whole, const Box& window, float margin);

}
