#pragma once

#include "core/quantity.hpp"
#include "dust/band.hpp"

#include <cstdint>

namespace flapdoor::dust {

/// Waste bags: every figure here is judgment with a band of ten either way. Show the pathway as "possible", never as a share.

/// Share of the fine dust (up to 20 um) of a drop that hangs in the bag's head-space.
enum class Drop : std::uint8_t { gentle_misted, gentle_dry, thrown_dry };
double head_space_share(Drop drop);

/// Share of the head-space cloud that still hangs after a while: exp(-v_s t/h).
/// @param height  of the head-space, above 0; insists
double still_hanging(Speed settling, Time since_drop, Length height);

/// Air pressed out when a bag is closed: usual 20 L, twice that from two thirds full on, when there is no room to twist.
/// @param filled  share of the bag's volume, 0 to 1
Volume pressed_out(double filled);

/// What a bag of the usual size holds (judgment).
inline constexpr Volume bag_volume{0.1};

/// Share of the head-space cloud that comes out when the air is pressed out: of the air over the content, all that is
/// pressed out.
double pressed_out_share(double filled);

/// Air that an untied bag swaps each time it is moved. A gooseneck (twisted, folded over, taped) leaks none.
inline constexpr Volume untied_swap{1e-3};

/// How a neck is shut, from worst to best.
enum class Neck : std::uint8_t { open, taped, gooseneck };

/// Share of what is in a bag that comes out each time it is moved: an open neck swaps air as it swings and tips; tape round
/// gathered film leaves the channels of its pleats (a tenth of that, judgment); a gooseneck leaks none.
double let_out_per_move(Neck neck);

/// Air that comes out each time it is moved, in the same proportion.
Volume swapped_per_move(Neck neck);

/// How a bag is made and what is in it.
struct BagLoad {
    double filled = 0.5;          ///< share of its volume, 0 to 1
    bool has_sharp_debris = false;
    bool is_doubled = false;      ///< a second bag, or one of 6 mil
};

/// Chance that a bag bursts when it is lifted: 0.01 up to two thirds full, 0.1 beyond, 0.3 beyond with sharp debris in a
/// single thin bag.
double burst_probability(const BagLoad& load);

/// Share of the content that a burst spills.
inline constexpr Band burst_spill{0.12, 0.05, 0.30};

/// Outer surface that takes on the room's loading until it is vacuumed or wiped.
inline constexpr Area bag_outside{0.5};

}
