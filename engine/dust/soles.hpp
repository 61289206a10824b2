#pragma once

#include "dust/band.hpp"
#include "dust/size_class.hpp"

#include <cstdint>

namespace flapdoor::dust {

enum class SoleKind : std::uint8_t { smooth, treaded };

/// Floor that one sole touches in a step.
inline constexpr Area sole_contact{0.02};

/// Most dust that one sole carries (judgment).
inline constexpr Mass sole_capacity{3e-3};

/// What a sole holds after several dusty steps, as a share of what the contacted area carries.
/// Sippola, Sextro & Thatcher 2014, abstract: 0.10 to 0.40.
inline constexpr Band equilibrium_uptake{0.22, 0.10, 0.40};

/// Share of its dust that a sole leaves behind in one step, after `clean_steps` earlier steps since it was last in dust:
/// 1/(n + 3.68). A power law, not an exponential: what has stayed on longest holds best.
/// Source: fitted to "Rates of loss and replacement of very small particles on the contact surfaces of footwear", record.
double sole_loss(int clean_steps);

/// Share that is left after a number of clean steps: 2.68/(n + 2.68); the product of what sole_loss leaves.
double sole_remaining(int clean_steps);

/// How readily a class goes to a sole: 1 below 40 um, 0.7 to 160 um, 0.3 above; chips only into treads (judgment).
double uptake_weight(SizeClass size, SoleKind kind);

/// Share of the free dust under the sole that one step picks up. Together with sole_loss(0) it ends at the equilibrium.
/// @param equilibrium  0 to 1, usual 0.22
double sole_pickup(SizeClass size, SoleKind kind, double equilibrium = equilibrium_uptake.typical);

/// Chips in a tread come out evenly over this many steps (judgment).
inline constexpr int steps_to_lose_chips = 25;

/// Share of the shoe's load that is on the shoe after the cover is taken off at the exit; a cover worn through the exit
/// is a shoe (judgment).
inline constexpr Band left_under_shoe_cover{0.02, 0.005, 0.10};

}
