#pragma once

#include "debrief/band.hpp"
#include "debrief/what_if.hpp"

#include <optional>

namespace flapdoor::debrief {

/// A figure in which two runs are compared.
enum class Compared { outside, floor, sill, hall_floor, breathed, took };
double value_of(const Figures& figures, Compared what);     ///< SI; outside in pg of lead

/// The mistake's share: before minus after when repaired, after minus before when put in, for the run itself.
double harm_of(const WhatIf& what_if, Compared what);

/// The same over the light runs, lowest tenth to highest tenth; nothing without them.
std::optional<Band> harm_band(const WhatIf& what_if, Compared what);

/// More than this of lead is more than a trifle. Judgment.
inline constexpr Picograms trifle_outside{10'000'000};
inline constexpr Loading trifle_on_surface = 0.1_ugpft2;

/// In how many of the light runs the mistake did harm: at least a tenth more lead got out, or a tenth more lies on floor or sill, and
/// more than a trifle. Judgment.
std::size_t harmful_runs(const WhatIf& what_if);

/// Did the mistake do harm in the run itself, by the same measure?
bool did_harm(const WhatIf& what_if);

/// The same of one figure: outside, floor or sill.
bool did_harm(const WhatIf& what_if, Compared what);

/// Does that figure look better with the mistake than without, by a twentieth and more than a trifle? Judgment.
bool did_good(const WhatIf& what_if, Compared what);

}
