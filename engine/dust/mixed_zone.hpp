#pragma once

#include "dust/lognormal.hpp"
#include "dust/settling.hpp"

namespace flapdoor::dust {

/// Mass of dust in a volume of air, kg/m3.
using Concentration = Density;

/// Mass let go in a time, kg/s.
using MassRate = Quantity<-1, 1, 1>;

/// Share of a stirred cloud that is still airborne: exp(-rate t).
double still_airborne(Rate loss, Time time);

/// Concentration that a steady source builds up in stirred air: G/(V k) (1 - exp(-k t)).
/// @param loss  all first-order losses together, above 0; insists
Concentration build_up(MassRate source, Volume zone, Rate loss, Time time);

/// Loss of a stirred room to its floor alone: v_s/H.
Rate settling_rate(Speed settling, Length ceiling);

/// Share of a class that leaves with the air rather than settle: air change/(air change + v_s/H).
double share_leaving(Rate air_change, Speed settling, Length ceiling);

/// Share of a cloud's mass that has settled in a stirred room without ventilation, over all sizes of the spread.
double settled_share(const Lognormal& cloud, Length ceiling, Time time, const Air& air);

}
