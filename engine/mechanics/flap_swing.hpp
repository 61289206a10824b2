#pragma once

#include "mechanics/doorway_section.hpp"
#include "mechanics/flap_door.hpp"

#include <vector>

namespace flapdoor::mechanics {

using OpenFor = Quantity<2, 1>;     ///< area times time, m2 s

enum class Heading { into_room, out_of_room };

/// How wide a door stands open at one moment of a passage.
struct Opening {
    double angle = 0.0;     ///< of the chord of the sheet on the room's side against the vertical, radians, to 0.001; out of the room negative
    Area area{};            ///< that air finds through all sheets, to 1 cm2; at rest what the slit leaks
};

/// One passage, from before the first touch until the sheets hang still again.
struct FlapSwing {
    std::vector<Opening> openings;      ///< one each swing_grid, from the start
    Area peak{};
    OpenFor open_for{};                 ///< integral over time of what is open beyond rest
    Time closing{};                     ///< from letting go of the last sheet until nine tenths of what is open after that are over
    bool has_torn_loose = false;        ///< the slit sheet's tape gave way at the foot
};

inline constexpr Time swing_grid{0.05};

/// Somebody walks through: pushes the slit's edges before him with the chest until they part, and holds the second sheet off
/// until he is an arm's length beyond. Body, reach and the hold of the tape are judgment. His body stops no air here.
/// @param pace  0.3 to 2 m/s
FlapSwing swing(const FlapDoor& door, Heading heading, Speed pace = 1.0_mps, SectionSteps steps = {}, int links = 12);

/// Where the sheets come to rest under a steady pressure difference across each of them.
struct Lean {
    Pressure across{};
    double angle = 0.0;         ///< of the second sheet's chord (of the slit sheet's when it is alone), radians, to 0.001
    Area slit{};                ///< hole through the slit sheet, to 1 cm2 beyond its gap at rest
    Area beside_second{};       ///< below and beside the second sheet, to 1 cm2; 0 without one
};

/// Settled under 0, 0.05 Pa and on by doubling to 1.6 Pa; ends earlier where a pressure blows a sheet up level.
std::vector<Lean> leans(const FlapDoor& door, SectionSteps steps = {}, int links = 12);

/// Part of the slit that a short second sheet leaves bare: 0 to 1; 1 without a second sheet, or when the slit goes through it.
double uncovered_share(const FlapDoor& door);

/// What the covered slit leaks while the second sheet lies on it, as a share of its gap at rest: 0.3 under a sheet that its
/// dowel pulls straight, all of it under one that hangs in waves (judgment).
double sealed_share(const FlapDoor& door);

/// The slit hangs this far open at rest (judgment: 0.005 m2 over a usual slit, 0.001 to 0.02).
inline constexpr Length slit_gap = 3.0_mm;

}
