#pragma once

#include "dust/bag.hpp"
#include "job/steps/close_bag.hpp"
#include "site/site.hpp"

namespace flapdoor::site {

/// The bag of that name, opened if there is none yet.
Bag& start_bag(Site& site, const job::BagId& id, bool is_heavy_duty);

/// What closing makes of a bag, by its card and how full it is.
struct BagClosing {
    dust::Neck neck = dust::Neck::open;
    double pressed_out = 0.0;       ///< share of the cloud over the content that comes out at somebody's face
    double drawn_off = 0.0;         ///< share of it that goes into a vacuum
    double burst = 0.0;             ///< chance that a heavy bag bursts when it is lifted
    Volume air_out{};               ///< got out of the bag
};
BagClosing closing_of(const job::CloseBag& step, double fill);

/// A neck shorter than this cannot be folded over and taped; the course asks for 8 to 10 in.
inline constexpr Length least_twist = 8.0_in;

/// Fuller than this there is no film left to twist.
inline constexpr double fullest = 2.0 / 3.0;

/// The outside of a bag takes on dust from where it stands.
void dust_the_skin(Site& site, Bag& bag);

}
