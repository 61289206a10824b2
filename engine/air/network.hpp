#pragma once

#include "air/leak.hpp"

#include <cstddef>
#include <tl/expected.hpp>
#include <vector>

namespace flapdoor::air {

/// Number of a zone in a network. `outdoors` is no zone: its pressure is zero by definition.
using ZoneIndex = std::size_t;
inline constexpr ZoneIndex outdoors = static_cast<ZoneIndex>(-1);

/// What stands open of a leak under a pressure of some size.
struct Openness {
    Pressure across;              ///< 0 or more
    double share = 1.0;           ///< of the leak, `least_openness` to 1
};

/// No opening is ever quite shut: the least share.
inline constexpr double least_openness = 0.01;

/// One opening between two zones.
struct Link {
    ZoneIndex from = outdoors;
    ZoneIndex to = outdoors;
    Leak leak;
    Pressure drive;               ///< stack or wind: added to p(from) - p(to)
    /// Where the air itself pushes the opening open or shut, as it does with a flap: pressures from 0 on in rising order, shares
    /// that do not fall, straight between, constant beyond the last. Empty: all of the leak stands open.
    std::vector<Openness> forward = {};
    std::vector<Openness> backward = {};   ///< the same for air that goes against the link's direction
};

/// What a link passes under a pressure that drives air from -> to; negative: the other way.
AirFlow flow(const Link& link, Pressure across);

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
    std::vector<Pressure> across;     ///< [link] what drives its flow, `drive` included
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
