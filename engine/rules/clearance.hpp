#pragma once

#include "core/quantity.hpp"

/// Clearance testing by wipe samples, where it may stand in for the cloth check. Arithmetic only: the program samples nothing,
/// and no loading of a run is compared with these levels.
namespace flapdoor::rules {

enum class SampledSurface { floor, sill, trough };

/// 5, 40 and 100 ug/ft2, called action levels since 2024. A state or city may ask for less.
/// Source: 89 FR 89416, 12 November 2024 (read: summary paragraph).
Loading clearance_level(SampledSurface surface);

/// A sample equal to the level fails. Source: 40 CFR 745.227(e)(8)(vii).
bool is_cleared(SampledSurface surface, Loading sample);

/// What has to be agreed or ordered by another law before samples may take the place of the cloths; all of it.
struct ClearanceTerms {
    bool is_binding = false;                ///< by contract or another law, not merely liked
    bool firm_has_samples_taken = false;
    bool sampler_is_certified = false;      ///< inspector, risk assessor or dust sampling technician
    bool cleans_until_below = false;        ///< the area is cleaned again until every sample is below its level
};

/// Source: 40 CFR 745.85(c).
constexpr bool may_replace_cloths(const ClearanceTerms& terms)
{
    return terms.is_binding && terms.firm_has_samples_taken && terms.sampler_is_certified && terms.cleans_until_below;
}

/// At least one hour after the final cleaning. Times on one clock. Source: 40 CFR 745.227(e)(8)(iv).
constexpr Time earliest_sample(Time final_cleaning) { return final_cleaning + 1.0_h; }

}
