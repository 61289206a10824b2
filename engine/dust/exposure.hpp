#pragma once

#include "dust/mixed_zone.hpp"

#include <span>

namespace flapdoor::dust {

/// Shares of airborne dust of one size that get into the nose and mouth, past the larynx, and into the lung's alveoli.
/// Inhalable: 0.5 (1 + exp(-0.06 d/um)) to 100 um, and nothing beyond (little larger dust is drawn in by calm air).
/// Thoracic and respirable: the inhalable share times 1 - Phi(ln(d/d50)/ln 1.5), d50 = 11.64 and 4.25 um.
/// Source: ISO 7708 (from memory).
/// @param d_ae  above 0; insists
double inhalable_share(Length d_ae);
double thoracic_share(Length d_ae);
double respirable_share(Length d_ae);

/// Air that moves between a worker's breathing zone and the room: low 3-6, moderate 6-11, high 11-22 m3/min air motion
/// (an occupational-health institute's description of the near-field model).
inline constexpr AirFlow usual_near_field_exchange{10.0 / 60.0};

/// The same in a closed room with the blower off, low air motion: middle of 3 to 6 m3/min. What the site uses.
inline constexpr AirFlow closed_room_exchange{4.5 / 60.0};

/// Concentration times time: what a breathing zone got.
using Dose = Quantity<-4, 3, 1>;

/// What a puff of dust close by adds to a breathing zone, beyond what it adds to the room: mass/b, however long it takes.
Dose dose_of_puff(Mass puff, AirFlow exchange);

/// Steady concentration of the room: G over all the air that is cleaned or replaced.
/// @param cleared  volume x (air change + deposition + other losses), above 0; insists
Concentration far_field(MassRate source, AirFlow cleared);

/// Steady concentration near the source: the far field plus G/b. Ventilating the room does not touch the second term.
/// @param exchange  b, above 0; insists
Concentration near_field(MassRate source, AirFlow cleared, AirFlow exchange = usual_near_field_exchange);

/// A time in one concentration.
struct Spell {
    Concentration concentration;
    Time time;
};

/// Average over eight hours whatever the spells add up to: sum(C t)/8 h.
Concentration eight_hour_average(std::span<const Spell> spells);

Concentration eight_hour_average(Dose dose);

/// How long one may stay in a concentration before the eight-hour average reaches a limit. At most 8 h.
Time time_to_reach(Concentration limit, Concentration concentration);

/// 29 CFR 1926.62 (from memory): limit and action level for lead, eight-hour averages.
inline constexpr Concentration lead_limit{50e-9};
inline constexpr Concentration lead_action_level{30e-9};

/// Geometric standard deviation of measured exposures between tasks (Piacitelli & Sussell 2002, NIOSH record): 4.3.
inline constexpr double exposure_gsd = 4.3;

}
