#pragma once

#include "air/leak.hpp"
#include "air/two_way_flow.hpp"

namespace flapdoor::air {

/// Wind and slammed doors: pressure differences wander by about 1 Pa and remember themselves for about 30 s (judgment).
inline constexpr Pressure gust_rms{1.0};
inline constexpr Time gust_memory{30.0};

/// Mean flow each way through a leak whose pressure difference is normal around `mean`: what goes back and forth even
/// where the mean is zero. Summed over 8 standard deviations either way in even steps.
/// @param mean  positive pushes out
/// @param rms   0 or more; insists
TwoWayFlow gust_flow(const Leak& leak, Pressure mean, Pressure rms);

}
