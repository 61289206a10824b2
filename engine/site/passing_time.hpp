#pragma once

#include "site/site.hpp"

#include <functional>

namespace flapdoor::site {

/// How long one tick of the site's clock is: short against every air exchange, long against a footstep.
inline constexpr Time tick = 10.0_s;

/// The clock counts whole seconds, so that an hour waited is exactly an hour.
Time whole_seconds(Time time);

/// What people do while time passes.
struct Doing {
    bool is_busy = true;                                ///< somebody moves about in the work room: stirs its air
    std::function<void(Site&, Time)> meanwhile = {};    ///< called at the start of each tick with its length
};

/// Lets time pass, in whole seconds: parcels travel, mixed dust settles and is carried by the air, clothes shed.
void pass_time(Site& site, Time duration, const Doing& doing = {});

/// A packet of fresh airborne dust at a place of the work room, height above the floor, split into parcels.
void release_cloud(Site& site, dust::Holding from, bool is_from_paint, plan::Point where, Length height, dust::SizeClass k, Amount amount, int parcels);

/// Dust put straight into the well-mixed air of a zone.
void raise_into_air(Site& site, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount, dust::Pathway pathway = dust::Pathway::none);

/// Dust that feet have whirled up at a place and that counts to the air of the zone already: a puff about the legs, in parcels,
/// where a zone has a cloud and the puff can be told from what hangs in the air anyway; else mixed in at once.
void raise_from_floor(Site& site, PerClassAmount& raised, std::size_t zone, plan::Point where);

}
