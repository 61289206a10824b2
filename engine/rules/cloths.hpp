#pragma once

#include "core/quantity.hpp"

#include <vector>

/// The cloth check as arithmetic. Into how many sections a surface is divided is plan/sections.hpp.
namespace flapdoor::rules {

enum class Shade { lighter, same, darker };     ///< of a cloth against the card

/// The same or lighter passes, on every surface. The text says "or lighter" for sills only; the purpose of the card is the
/// same elsewhere. Source: 40 CFR 745.85(b)(1)(ii).
constexpr bool passes(Shade shade) { return shade != Shade::darker; }

/// How often one sill, counter section or floor section came up darker.
struct ItemHistory {
    int failures = 0;       ///< 0, 1 or 2
    bool is_sill = false;
    bool folded_cloth = false;  ///< a sill's second wipe used an unused face of the first cloth
};

struct ClothCount {
    int wet_wipes = 0;
    int wet_cloths = 0;     ///< what goes on record; a folded cloth counts once
    int dry_cloths = 0;

    friend bool operator==(const ClothCount&, const ClothCount&) = default;
};

/// Every item is wiped wet once, again when it failed, and dry when it failed twice. Insists that only sills fold a cloth.
ClothCount count_cloths(const std::vector<ItemHistory>& items);

/// An hour after the second darker wipe or when the surface is dry, whichever is later. Times on one clock.
/// Source: 40 CFR 745.85(b)(1)(ii)(A)(3), (B)(2).
Time earliest_dry_wipe(Time second_failure, Time dry);

}
