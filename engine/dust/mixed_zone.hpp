#pragma once

#include "dust/lognormal.hpp"
#include "dust/settling.hpp"

#include <cstddef>
#include <vector>

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

/// Stirred zones that lose one class of dust and pass some of what they lose to each other, at rates that stay as they are.
struct CoupledZones {
    explicit CoupledZones(std::size_t zones) : loss(zones), passing(zones * zones) {}

    std::vector<Rate> loss;        ///< [zone] by all ways together
    std::vector<Rate> passing;     ///< [to * zones + from] the part of `from`'s loss that arrives in `to`

    Rate& pass(std::size_t from, std::size_t to) { return passing[to * loss.size() + from]; }
};

/// Each zone's mass summed over a spell, in units of mass times seconds: a way out with rate r has taken r times this.
/// Exact but for rounding: the exponential series of the rates, made uniform by the largest of them, has no negative term.
/// @param start  [zone] mass at the start, not negative
/// Source: Jensen 1953, Markoff chains as an aid in the study of Markoff processes (uniformization; recomputed against closed
/// solutions of one and two zones in tests/dust/mixed_zone_test.cpp).
std::vector<double> time_integrals(const CoupledZones& zones, const std::vector<double>& start, Time spell);

/// Share of a cloud's mass that has settled in a stirred room without ventilation, over all sizes of the spread.
double settled_share(const Lognormal& cloud, Length ceiling, Time time, const Air& air);

}
