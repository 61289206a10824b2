#pragma once

#include "air/leak.hpp"

#include <cstddef>
#include <tl/expected.hpp>
#include <vector>

namespace flapdoor::air {

/// Number of a zone in a network. `outdoors` is no zone: its pressure is zero by definition.
using ZoneIndex = std::size_t;
inline constexpr ZoneIndex outdoors = static_cast<ZoneIndex>(-1);

/// One opening between two zones.
struct Link {
    ZoneIndex from = outdoors;
    ZoneIndex to = outdoors;
    Leak leak;
    Pressure drive;               ///< stack or wind: added to p(from) - p(to)
    double reverse_share = 1.0;   ///< flow against the link's direction, as a share of what the leak would pass; 0.01 to 1.
                                  ///< 1 for a plain hole, less for a flap that seals
};

/// Air moved whatever the pressures are: a fan, a supply, a return.
struct Fan {
    ZoneIndex from = outdoors;
    ZoneIndex to = outdoors;
    AirFlow flow;                 ///< from -> to
};

/// Zones that share walls, seen as pressures and flows.
struct Network {
    std::size_t zones = 0;
    std::vector<Link> links;
    std::vector<Fan> fans;
};

struct NetworkFlows {
    std::vector<Pressure> pressure;   ///< [zone], above outdoors
    std::vector<AirFlow> flow;        ///< [link], positive from -> to
    int iterations = 0;
};

/// A group of zones that no leak joins to the outdoors, with fans that put in more air than they take out (or less).
/// No pressure balances it; whoever built the network left a leak out.
struct SealedZones {
    std::vector<ZoneIndex> zones;   ///< ascending
    AirFlow surplus;                ///< into the group
};

/// Pressures at which what flows into each zone flows out of it. Damped Newton; each leak's flow rises with its pressure
/// difference, so there is one answer and the damping always finds it. Balances volumes at one density: across 10 K
/// that is 3 % off a mass balance, far inside the band of any leak area. Quasi-steady: no pulses.
/// A sealed group whose fans cancel keeps its first zone at the pressure of outdoors.
/// Residual at the answer: below 1e-9 m3/s in every zone.
/// @return  pressures and flows, or the sealed group that makes the question senseless (the one of the lowest zone)
tl::expected<NetworkFlows, SealedZones> solve(const Network& network);

}
