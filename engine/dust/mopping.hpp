#pragma once

#include "core/quantity.hpp"
#include "dust/band.hpp"

namespace flapdoor::dust {

/// Water that a wrung mop leaves on a floor, L/m2 (a film thickness in mm): 0.05 (0.02 to 0.1) (judgment).
inline constexpr Length wrung_film{0.05e-3};

/// Share of what the mop picks up that gets into the water it is wetted with: 1 with one bucket, 0.1 when it is rinsed in
/// a second one first (judgment; no measured lead data on one or two buckets were found).
inline constexpr double one_bucket = 1.0;
inline constexpr double two_buckets = 0.1;

/// A floor mopped with one filling.
struct Mopping {
    double removed = 0.9;             ///< eta, what the mop lifts; 0 to 1
    double into_water = one_bucket;   ///< q, 0 to 1
    Length film = wrung_film;         ///< above 0
    Area floor;                       ///< above 0
    Volume water{8e-3};               ///< above 0
};

/// Where the dust of the floor is afterward; shares that add up to 1.
struct Mopped {
    double floor;    ///< missed, and brought back by dirty water
    double water;    ///< in the bucket the mop is wetted with
    double rinsed;   ///< in the rinsing bucket
};

/// Closed form of mopping with water that gets dirtier: floor = (1 - eta) + q eta (1 - (1 - e^-x)/x), x = film x floor/water.
Mopped mop(const Mopping& job);

/// Share of an evenly dirty water's dust that one square of floor gets back while mopping: film x area/water.
double brought_back(Length film, Area area, Volume water);

/// Misting the room air after the work: air it clears in a second (Kokkonen et al., abstract: 0.03 to 0.07 m3/s).
inline constexpr AirFlow misting_clears{0.05};

/// The same as a rate in a room.
Rate misting_rate(AirFlow clears, Volume room);

}
