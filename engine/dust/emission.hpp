#pragma once

#include "dust/band.hpp"
#include "dust/lognormal.hpp"

#include <cstdint>

namespace flapdoor::dust {

/// Work that makes dust.
enum class Activity : std::uint8_t {
    dry_hand_sanding,
    power_sanding,
    dry_scraping,
    plaster_demolition,
    sawing_trim,
    window_removal,
    prying_trim,
    drilling,
};
inline constexpr std::size_t activity_count = 8;

/// What keeps the dust down at the tool.
enum class DustControl : std::uint8_t { none, misted, hepa_shroud };

/// What a yield is counted by.
enum class YieldPer : std::uint8_t { square_meter, meter, piece };

/// What one activity lets loose. Shares 0 to 1, sizes aerodynamic. Mostly judgment: docs/model.md, "Release".
struct EmissionTraits {
    YieldPer per;
    Band debris_grams;     ///< all that comes off, per unit of `per`
    Band dust_share;       ///< of the debris, below 500 um; the rest are chips
    Band airborne_share;   ///< of the dust, becomes a cloud at tool height; the rest falls at once
    Lognormal cloud;       ///< sizes of the cloud
    Band cloud_median_um;  ///< band of its median
    Lognormal fall;        ///< sizes of what falls at once (judgment, no source: coarser than the cloud by 4 to 8 times)
};

const EmissionTraits& emission_traits(Activity activity);

/// How a control changes a release; all multipliers.
struct ControlTraits {
    Band dust_share;       ///< on the share of dust in the debris: misting keeps flakes whole
    Band airborne_share;   ///< on the share of the dust that becomes a cloud
    Band escaping;         ///< on all dust: what the shroud does not catch
};

/// Misted: 0.3 x 0.5 (NIOSH records disagree: personal air fell to 0.30, or to 0.66 without significance).
/// Shroud: 0.1, 0.03 to 0.2 (Mead et al. 1995, Piacitelli & Sussell 2002, NIOSH records). A dust bag alone is no better than none.
const ControlTraits& control_traits(DustControl control);

/// One run's draw of what varies from job to job; multipliers on the typical figures.
struct EmissionDraw {
    double yield = 1.0;         ///< on the dust; chips make up the rest of the debris as long as there is a rest
    double airborne = 1.0;
    double cloud_median = 1.0;
};

/// Sizes of the cloud in that draw.
Lognormal cloud_sizes(Activity activity, const EmissionDraw& draw);

/// Where the debris of a piece of work went. The four parts add up to the debris, which a draw makes more only where it makes
/// more dust than all the typical debris.
struct Release {
    Mass chips;
    Mass fallen;     ///< dust that fell within reach of the work
    Mass cloud;
    Mass captured;   ///< in the tool's vacuum

    Mass total() const { return chips + fallen + cloud + captured; }
};

/// @param units  square meters, meters or pieces, as the activity counts; 0 or more, insists
Release release(Activity activity, DustControl control, double units, const EmissionDraw& draw = {});

/// Lead in a material: lead per area over mass per area, at most 1. Film mass per area is thickness times density.
/// 1 mg/cm2 in a 0.5 mm film of 2000 kg/m3 is 1 %. Insists that the material weighs something.
double lead_fraction(Loading lead, Loading material);

/// Paint counts as lead-based from 1.0 mg/cm2 or 0.5 % by weight (40 CFR 745 subpart D).
inline constexpr Loading paint_threshold_loading{1e-2};
inline constexpr double paint_threshold_share = 0.005;

/// Where falling dust lands, as a distance from the work: density exp(-r/r0), r0 = 0.5 m, cut at 1.5 m (judgment).
/// @param draw  uniform in [0, 1); insists
Length throw_distance(double draw);

}
