#pragma once

#include "air/air_properties.hpp"

namespace flapdoor::air {

using Torque = Quantity<1, 0, 1>;
using Inertia = Quantity<1, 2, 1>;   ///< kg m2

/// The free-hanging sheet of a flap door, held at its top edge, with a dowel in its bottom hem.
struct Flap {
    Length length{2.0};      ///< top edge to hem
    Length width{1.0};
    Mass sheet{0.28};        ///< 6 mil polyethylene of 2 m2
    Mass dowel{0.25};        ///< 0 when it is missing
};

/// Restoring moment when the sheet stands horizontal: g (m_sheet L/2 + m_dowel L).
Torque weight_moment(const Flap& flap);

/// Sine of the angle at which a pressure difference holds the sheet: dP W L^2/(2 M). Held to 0..1; only a pressure that
/// pushes the sheet away from its frame opens it.
double opening_sine(const Flap& flap, Pressure away_from_frame);

/// The same angle in radians, 0 to pi/2.
double opening_angle(const Flap& flap, Pressure away_from_frame);

/// Pressure difference that holds the sheet open at an angle.
/// @param radians  0 to pi/2; insists
Pressure pressure_to_hold(const Flap& flap, double radians);

/// Gap below and beside the sheet at an opening: W L sin + L^2 sin cos.
Area gap_area(const Flap& flap, double radians);

/// What the slit leaks while the sheet lies on it, as a share of what it leaks uncovered (judgment, no source).
inline constexpr double sealed_share = 0.3;

/// Area that air finds through the cut slit of the inner sheet and past the hanging sheet: the two in series, and never
/// less than the sealed share of the slit. A weighted check valve: pressure the other way only presses it shut.
/// @param slit  area of the slit at rest without the hanging sheet, 0.001 to 0.02 m2, usual 0.005 (judgment)
Area leak_area(const Flap& flap, Area slit, Pressure away_from_frame);

/// Moment of inertia about the top edge, without air: m_s L^2/3 + m_d L^2.
Inertia inertia(const Flap& flap);

/// What the moving air adds: (pi/4) rho W^2 L^3/3, more than the film itself.
Inertia air_inertia(const Flap& flap, Density air);

/// Period of a small free swing: 2 pi sqrt(I/M). Pass inertia(flap) for a vacuum, or the sum with air_inertia.
Time swing_period(const Flap& flap, Inertia about_top);

/// How long the gap takes to close after a passage, overdamped by the air: judgment, 2 to 4 s.
inline constexpr Time closing_time{3.0};
inline constexpr Time closing_time_least{2.0};
inline constexpr Time closing_time_most{4.0};

}
