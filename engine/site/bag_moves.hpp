#pragma once

#include "site/bagging.hpp"
#include "site/move_fault.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::site {

/// What hands do to a full bag, one move after the other.
enum class BagMove { press_gently, press_hard, draw_air, twist, fold, tape, loop, knot, vacuum_outside };
inline constexpr std::size_t bag_move_count = 9;

/// The move in a few words, and how it is done.
std::string_view title_of(BagMove move);
std::string_view how_to(BagMove move);

/// A bag in the hands of somebody who closes it.
struct BagInHand {
    double fill = 0.6;              ///< share of its volume, 0 to 1
    Length twist = 9.0_in;          ///< of the neck, if it is twisted
    std::vector<BagMove> moves;     ///< as done, each at most once
};

/// What came of it: the cards that say the same, and what closing made of the bag.
struct BagHandled {
    job::CloseBag card;             ///< its bag and vacuum are for the caller to name
    bool is_vacuumed_after = false; ///< a card to vacuum the outside follows
    bool is_vacuumed_before = false;    ///< it came before the closing: dust of the closing lies on it again
    BagClosing closing;
    std::vector<MoveFault> faults;  ///< of the moves done; of those left out when the bag is `is_done`
};

/// Why that move cannot be made now; nothing when it can. A wrong order is no reason: it is carried out and shows.
std::optional<std::string_view> why_not(const BagInHand& bag, BagMove move);

/// @param is_done  nothing more will be done to it: what was left out counts
BagHandled handled(const BagInHand& bag, bool is_done);

/// The moves as the course teaches them, air pressed out by hand.
/// Source of the order and of 8 to 10 in: course text (gooseneck); of the loop 2 to 3 in below the fold: the same.
std::vector<BagMove> taught_bag_moves();

}
