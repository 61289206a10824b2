#pragma once

#include "core/quantity.hpp"
#include "dust/band.hpp"

namespace flapdoor::dust {

/// Face of a verification cloth that shows the dust, and the largest floor wiped with one cloth (40 CFR 745.85(b)).
inline constexpr Area cloth_face{0.04};
inline constexpr Area most_floor_per_cloth = 40.0_ft2;

/// What a firm wipe gathers of the loading.
inline constexpr double verification_pickup = 0.7;

/// Coverage that the card's reference shade stands for. No published value was found: 0.5 % (0.2 to 2 %), judgment.
inline constexpr Band card_coverage{0.005, 0.002, 0.02};

/// How much denser the dust lies on the cloth than it lay on the surface: eta A/A_cloth. About 65 for 40 ft2, which is why
/// a wipe finds what no eye can see on the floor.
double wipe_concentration(Area wiped, double pickup = verification_pickup);

/// Coverage of the cloth's face by what it wiped up.
/// @param surface_coverage  that of the wiped surface by dust within reach (free, and the wetted share of the bound)
double cloth_coverage(double surface_coverage, Area wiped, double pickup = verification_pickup);

/// True when the cloth is no darker than the card. It answers to all dust, not to lead: a pass is never a statement about
/// a lead level.
bool matches_card(double coverage_on_cloth, double card = card_coverage.typical);

/// Lead loading of dust of one size that just passes: for showing how far the card can be from a lead level.
/// @param lead_share  of the dust, 0 to 1
Loading lead_that_just_passes(Area wiped, Length diameter, double lead_share, double card = card_coverage.typical);

/// What a laboratory would report of a wipe sample on a hard floor: 0.9 of the free and 0.2 of the bound dust (judgment);
/// on carpet 2 to 26 % of the free dust (Reynolds et al. 1997, NIOSH record).
inline constexpr double sampled_free = 0.9;
inline constexpr double sampled_bound = 0.2;
inline constexpr Band sampled_carpet{0.07, 0.02, 0.26};

}
