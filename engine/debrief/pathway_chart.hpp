#pragma once

#include "debrief/outcome.hpp"
#include "debrief/plan_bands.hpp"
#include "text/markup.hpp"

namespace flapdoor::debrief {

/// Shares by pathway as lying bars that reach one of five words: the figures of a single run are no better than that.
text::Element pathway_chart(const std::vector<PathwayLine>& pathways);

/// The same over the runs of a study: bars reach the word of the median, whiskers those of the band. Bags and sheeting: a
/// dashed bar to the word of the high end.
text::Element pathway_chart(const std::vector<PathwayBand>& pathways);

/// What is told about a pathway's share over a study: `some (trace to much)`; `possible, up to some` for what nobody has
/// measured.
std::string told_share(const PathwayBand& band);

/// What is told about a pathway's share: `most`; `trace, possible only` for what nobody has measured.
std::string told_share(const PathwayLine& line);

/// 0 for none, 1 for a trace, ... 5 for most.
int share_level(double share);

}
