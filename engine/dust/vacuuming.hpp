#pragma once

#include "dust/size_class.hpp"
#include "dust/surface_kind.hpp"

namespace flapdoor::dust {

/// How a vacuum goes over a surface.
struct Nozzle {
    Length width{0.3};         ///< above 0
    Speed speed{0.3};          ///< above 0; strokes above 0.6 m/s clean less
    bool has_beater = false;   ///< turning brush: helps on carpet only
};

/// Exposure that one stroke gives: 1/(w v). 0.3 m at 0.3 m/s is 0.185 min/m2, so that 2 min/m2 are 11 strokes.
Exposure exposure_of_stroke(const Nozzle& nozzle);

/// Strokes that make up an exposure.
double strokes_for(Exposure exposure, const Nozzle& nozzle);

/// Edges of a room, 0.15 m wide, are three times harder to clean than its middle and decide clearance (ASTM four-room
/// containment study, J ASTM Int 8(8), abstract).
inline constexpr Length edge_strip{0.15};
inline constexpr Band edge_penalty{3, 2, 5};

/// Rate at which free dust of a class goes into the nozzle.
/// Class factor (judgment): 0.5 below 5 um, 0.8 to 20 um, 1 above, 1.5 for chips. A HEPA filter changes nothing here:
/// Rich et al. 2002 and Yiin et al. 2004 (abstracts) found no reliable difference in what is left on hard surfaces.
/// @param edge_divisor  how many times slower the edge strip cleans, 1 or more; insists
CleaningRate vacuum_rate(SurfaceKind surface, SizeClass size, const Nozzle& nozzle, bool is_edge,
                         double edge_divisor = edge_penalty.typical);

/// Share of the free dust that is left: exp(-k t). Bound dust stays whatever the time.
double vacuum_residual(CleaningRate rate, Exposure exposure);

/// Share of a surface, bound dust included, that suction takes: (1 - B)(1 - exp(-k t)).
double vacuum_removed(SurfaceKind surface, CleaningRate rate, Exposure exposure);

/// Rate at which the bound dust of a carpet comes up within reach: 5 % per min/m2 with a beater, 1 % without (judgment). Nothing
/// on hard surfaces.
CleaningRate loosening_rate(SurfaceKind surface, const Nozzle& nozzle);

/// What suction does to a place that it meets, as shares of what lay there.
struct Suction {
    double of_free;     ///< of the free dust: taken
    double loosened;    ///< of the bound dust: worked loose, taken or not
    double of_bound;    ///< of the bound dust: worked loose and then taken
};

/// Free dust is drawn off while bound dust comes up and feeds it, both all the time: F' = u B - k F, B' = -u B.
/// @param rate      k, 0 or more
/// @param loosening u, 0 or more
Suction suction(CleaningRate rate, CleaningRate loosening, Exposure exposure);

/// The joint along the walls is a crack of its own: an edge strip holds 1 - (1 - B)^n where the floor holds B, n being how
/// many times harder the strip is to clean (judgment; the study found the perimeter three times harder, not why).
/// @param edge_divisor  1 or more
double bound_at_edge(double bound_share, double edge_divisor);

/// Share of an area that one stroke really meets: the middle of a room and its edge (judgment).
inline constexpr double pass_coverage = 0.85;
inline constexpr double edge_pass_coverage = 0.6;

/// Coverage after several strokes, each over places of its own: 1 - (1 - c)^n.
double coverage_of(double per_pass, int passes);

}
