#pragma once

#include "debrief/report.hpp"
#include "text/markup.hpp"

namespace flapdoor::debrief {

/// The steps of a run over the time of day: a row a phase, a bar a step, and above them the sign of every fault at the
/// first step it speaks of. Insists on a run with steps.
text::Element timeline(const Report& report);

}
