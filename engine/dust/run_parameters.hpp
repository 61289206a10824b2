#pragma once

#include <cstdint>

namespace flapdoor::dust {

/// What nobody knows well enough to fix, as one run takes it. Defaults are the medians. Members without a unit multiply
/// the typical figure of their table. Bands and reasons: docs/model.md, "What is uncertain".
struct RunParameters {
    double yield = 1.0;                ///< dust from the work; GSD 3
    double cloud_median = 1.0;         ///< on the median size of clouds; GSD 1.4
    double lead_share = 1.0;           ///< on the lead fraction of dust; GSD 1.8
    double airborne = 1.0;             ///< on the share of dust that becomes a cloud; GSD 2.5
    double eddy = 1.0;                 ///< on eddy diffusivities; GSD 2.5
    double passage = 1.0;              ///< on the air swapped in a passage; GSD 1.8
    double leak = 1.0;                 ///< on slit and seam areas; GSD 2.5
    double return_flow = 1.0;          ///< on the flow into an open return; GSD 1.5
    double raised = 1.0;               ///< on shares raised per step; GSD 5
    double sole_uptake = 0.22;         ///< equilibrium uptake of soles; GSD 1.6, 0.10 to 0.40
    double pad_capture = 0.35;         ///< of a fresh tack pad per contact; even, 0.2 to 0.5
    double bound = 1.0;                ///< on the bound share of floors; even, 0.5 to 1.5
    double vacuum = 1.0;               ///< on vacuuming rates; GSD 1.5
    double edge_penalty = 3.0;         ///< on edge strips; even in the logarithm, 2 to 5
    double exhaust = 1.0;              ///< on what a vacuum blows out; GSD 10
    double handling = 1.0;             ///< on what bags and sheeting let go; GSD 10
    double card_coverage = 0.005;      ///< that the verification card's shade stands for; GSD 2, 0.002 to 0.02

    friend bool operator==(const RunParameters&, const RunParameters&) = default;
};

/// The draw that belongs to a seed: the same on every machine, and each member keeps its luck when others are added after it.
/// Lognormal unless said otherwise above, out to 2.5 standard deviations.
RunParameters draw_parameters(std::uint64_t seed);

}
