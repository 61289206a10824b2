#pragma once

#include "core/quantity.hpp"
#include "dust/band.hpp"

namespace flapdoor::dust {

/// Share of a sole's dust that a fresh pad takes in one contact: adhesive mats removed 20 to 50 % (encyclopaedia entry citing
/// a 2012 study). Bench claims above 99 % are not used.
inline constexpr Band pad_capture{0.35, 0.2, 0.5};

/// A pad that carries this takes nothing any more (judgment).
inline constexpr Loading pad_full{5e-3};

/// Contacts that a careful walker gives each foot.
inline constexpr int contacts_per_foot = 2;

/// Share of the fine dust (1 to 20 um) that peeling a used sheet lets go (judgment).
inline constexpr Band peeling_release{0.01, 0.001, 0.05};

/// Capture in one contact: e0 (1 - q/q_full), 0 when full.
/// @param fresh  e0, 0 to 1
/// @param load   what the pad carries already
double pad_capture_at(double fresh, Loading load, Loading full = pad_full);

/// What several contacts take together: 1 - (1 - e)^n.
double captured_in(double per_contact, int contacts);

}
