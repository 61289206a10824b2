#pragma once

#include "core/quantity.hpp"

namespace flapdoor::air {

/// Air that changes sides when one person walks through. Measured only at rigid hospital doors: 0.27 to 2.42 m3
/// (Kalliomaki 2021, abstract; unit cut off in the copy, read as m3); 1.0 to 1.8 m3 over 374 to 85 m3/h net exhaust
/// (Hayden et al., NIOSH record 20031962). A flap has no leaf to swing, hence the lower default (judgment).
inline constexpr Volume flap_passage{0.9};
inline constexpr Volume flap_passage_least{0.3};
inline constexpr Volume flap_passage_most{2.4};
inline constexpr double flap_passage_gsd = 1.8;

/// A hinged door with a person passing and no net flow: fitted to the two ends of the NIOSH record.
inline constexpr Volume hinged_door_passage{2.2};

/// Carrying a sheet or a bag moves more air (judgment). Running does not: speed did not matter in the NIOSH record.
inline constexpr double carrying_factor = 1.5;

/// Net inward velocity that cuts the exchange to 1/e; fitted to the NIOSH record with a 1.9 m2 door, 0.05 to 0.25 m/s.
inline constexpr Speed sheltering_speed{0.07};

/// Volume exchanged in one passage: V exp(-u/u0). The same volume goes each way.
/// @param still   the volume without net flow
/// @param inward  mean net velocity into the work room through the opening; outward flow gives no shelter
Volume passage_volume(Volume still, Speed inward);

/// Volume a hinged leaf sweeps: a quarter of a circle of its width, times its height.
Volume swept_volume(Length leaf_width, Length leaf_height);

}
