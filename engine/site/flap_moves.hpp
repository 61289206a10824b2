#pragma once

#include "site/move_fault.hpp"
#include "site/opening.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::site {

/// What hands do to hang a flap door, one move after the other.
enum class FlapMove { fold_slack, tape_first, cut_slit, hang_second, put_in_dowel };
inline constexpr std::size_t flap_move_count = 5;

std::string_view title_of(FlapMove move);
std::string_view how_to(FlapMove move);

/// A flap door in the making.
struct FlapInHand {
    Length gap = 3.0_in;            ///< hem of the second sheet above the floor
    Length slit_foot = 0.15_m;      ///< where the cut ends above the floor
    std::vector<FlapMove> moves;    ///< as done, each at most once
};

struct FlapHandled {
    job::HangFlap card;             ///< its doorway and sheeting are for the caller to name
    bool can_pass = false;          ///< there is a slit to go through
    std::vector<MoveFault> faults;      ///< of the moves done; of those left out when the door is done
};

/// Why that move cannot be made now; nothing when it can. A wrong order is no reason: it is carried out and shows.
std::optional<std::string_view> why_not(const FlapInHand& door, FlapMove move);

/// @param is_done  nothing more will be done to it: what was left out counts
FlapHandled handled(const FlapInHand& door, bool is_done);

/// The moves as the course teaches them. Source of the order (slack, tape all round, slit, shorter second sheet taped at the
/// top alone, weighted, about 3 in off the floor): course text; the two sheets themselves also county guidance for larger jobs.
std::vector<FlapMove> taught_flap_moves();

}
