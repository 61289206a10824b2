#pragma once

#include "debrief/report.hpp"
#include "text/markup.hpp"

namespace flapdoor::debrief {

/// Lead that got out because of each mistake, ug: one bar each for this run, a whisker for the band over the light runs, most first.
/// Insists that the report has what-ifs with repairs.
text::Element what_if_chart(const Report& report, std::size_t most = 40);

}
