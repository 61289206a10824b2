#pragma once

#include "debrief/band.hpp"
#include "debrief/report.hpp"

#include <string>
#include <string_view>
#include <vector>

/// Levels as every debrief tells them: what this run came to, beside the median and the band of the plan's study.
namespace flapdoor::debrief {

struct Level {
    std::string own;        ///< this run's
    std::string median;     ///< empty without a study
    std::string range;
    std::string_view note;  ///< what it is not
};

/// @param band  in ug/ft2, null when there is none
Level level_of(Loading own, const Band* band);

/// @param band  in ug, null when there is none
Level level_of(Picograms own, const Band* band);

/// An exposure: the band in ug/m3, of which the high end is what one in ten reaches.
Level level_of(dust::Concentration own, const Band* band);

/// What stands in the columns of a level, in order: median, range and this run, or this run alone without a study.
std::vector<std::string> level_heads(const Report& report);
std::vector<std::string> level_texts(const Report& report, const Level& level);

/// The same heads for exposures: typical, one in ten, this run.
std::vector<std::string> exposure_heads(const Report& report);

/// A loading or an amount over a study alone: "12 ug/ft2 (4.1 to 38 ug/ft2)".
std::string loading_text(const Band& band);
std::string amount_text(const Band& band);

/// "typical 3.1, one in ten 25 ug/m3".
std::string exposure_text(const Band& band);

/// "Over 20 runs with other seeds the plan passed as practice in 18 and its cloth check in 17."
std::string study_line(const PlanBands& bands);

/// From where the bands come and what they are: how many runs, how fine, which quantiles.
std::string source_line(const PlanBands& bands);

}
