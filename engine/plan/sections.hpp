#pragma once

#include "core/quantity.hpp"

#include <cstdint>

namespace flapdoor::plan {

/// Areas as the rule compares them: whole hundredths of a square foot, so that 40.0 sq ft is exactly 40.0 sq ft.
std::int64_t hundredths_of_square_foot(Area area);

/// Into how many roughly equal sections a floor or counter is divided for the verification wipes: one up to and
/// including 40 sq ft; beyond, so many that each is less than 40 sq ft. Zero for no area.
/// Source: 40 CFR 745.85(b)(1)(ii)(B).
int sections_needed(Area area);

}
