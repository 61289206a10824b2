#pragma once

#include "core/quantity.hpp"

#include <span>

namespace flapdoor::air {

/// Below this pressure difference every leak is a straight line through zero: creeping flow, and a finite slope for the
/// network solver.
inline constexpr Pressure linear_below{0.01};

/// An opening between two bodies of air, as a power law Q = C dP^n.
struct Leak {
    AirFlow at_one_pascal;     ///< C, the flow at 1 Pa; above 0
    double exponent = 0.65;    ///< n: 0.5 (sharp hole) to 1 (long fine crack)

    friend bool operator==(const Leak&, const Leak&) = default;
};

/// A sharp-edged hole: Q = Cd A sqrt(2 dP/rho).
struct Orifice {
    Area area;                 ///< above 0
    double discharge = 0.6;    ///< Cd, 0.55 to 0.65

    friend bool operator==(const Orifice&, const Orifice&) = default;
};

/// The same law in the one form that the network solves.
Leak leak_of(const Orifice& hole, Density air);

/// Flow driven by a pressure difference, positive from the high side; odd in `difference`; straight below 0.01 Pa.
/// Source: ASHRAE Handbook Fundamentals, ventilation and infiltration (from memory).
AirFlow flow(const Leak& leak, Pressure difference);

/// d(flow)/d(difference), m3/(s Pa), always above zero.
double slope(const Leak& leak, Pressure difference);

/// One hole that passes what several in a row pass: 1/A^2 = sum 1/Ai^2. Zero when one of them is zero.
Area series_area(std::span<const Area> holes);

/// The ideal hole (Cd = 1) that passes as much as the leak at a reference pressure difference.
Area equivalent_leakage_area(const Leak& leak, Density air, Pressure reference = Pressure{4.0});

}
