#pragma once

#include "air/air_properties.hpp"
#include "air/two_way_flow.hpp"

namespace flapdoor::air {

/// An open doorway between two zones: warm air leaves at the top, cool air comes in below.
struct Doorway {
    Length width{0.9};
    Length height{2.0};
    double discharge = 0.65;   ///< 0.6 to 0.65 at large temperature differences; see discharge_at for small ones
};

/// Two-way exchange with no net flow: (Cd/3) W H^1.5 sqrt(g drho/rho), the same each way. Zero at equal densities.
/// Source: the orifice law integrated over the height (ASHRAE Handbook Fundamentals, from memory). A cold-store test
/// needed a factor 0.68 on the ideal formula (Pham & Oliver 1983, AIVC record).
AirFlow exchange_flow(const Doorway& door, const Air& here, const Air& there);

/// Net flow that stops the counterflow: (2/3) Cd W H^1.5 sqrt(2 g drho/rho).
AirFlow suppressing_flow(const Doorway& door, const Air& here, const Air& there);

/// Flows each way when the network pushes a net flow through the doorway. Exact for the same profile: the neutral
/// height moves until out - in = net; beyond the suppressing flow everything goes one way.
TwoWayFlow doorway_flow(const Doorway& door, const Air& here, const Air& there, AirFlow net);

/// Discharge coefficient measured at small temperature differences: 0.40 + 0.0045 dT (Wilson & Kiel 1990, from memory).
/// @param kelvins  size of the difference, 0 to 40 K
double discharge_at(double kelvins);

/// Share of the open-door exchange that is left behind loose hanging strips, and its band. Pham & Oliver 1983, AIVC
/// record: strips cut about 93 %, air curtains 75 to 80 %. Stands for an unsealed sheet hung in a door.
inline constexpr double loose_curtain_share = 0.07;
inline constexpr double loose_curtain_share_least = 0.03;
inline constexpr double loose_curtain_share_most = 0.2;

}
