#pragma once

#include "site/effects.hpp"
#include "site/site.hpp"

namespace flapdoor::site {

/// Two-box model of what workers breathe, outside any respirator: the inhalable dust in the air of the zone where they are,
/// and on top of it what they let loose close by. Left out: posture, the wake of the body, where a tool's exhaust blows.

/// Everybody breathes the air of their zone for a spell.
void breathe(Site& site, Time spell);

/// Dust of a class that the team has just let loose within reach: adds mass/b to each who stands in that zone.
void breathe_near(Site& site, const Team& by, std::size_t zone, dust::SizeClass k, Amount puff);

/// Puts dust into the air of a zone out of the hands of a team.
void raise_near(Site& site, const Team& by, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount);

/// Inhalable dust and lead in the breathing zone, averaged over eight hours whatever the job took. One run is one draw:
/// measured exposures spread with a GSD of 4.3 between tasks.
struct Exposure {
    dust::Concentration dust{};
    dust::Concentration lead{};
};
Exposure exposure_of(const Worker& who);

}
