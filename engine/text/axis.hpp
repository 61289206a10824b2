#pragma once

#include <vector>

namespace flapdoor::text {

/// A scale of a chart: which values it shows, where they stand, and where its ticks are.
struct Axis {
    double least = 0.0;
    double most = 1.0;
    bool is_log = false;
    std::vector<double> ticks;      ///< rising, within least to most

    /// 0 at `least`, 1 at `most`; values outside are clamped. On a logarithmic axis what is not positive is at 0.
    double share(double value) const;
};

/// From zero (or the least value, when negative) to a round number at or above the largest, ticks in steps of 1, 2 or 5
/// times a power of ten. All-zero data get 0 to 1. @param about  wanted number of steps, 2 to 20; insists
Axis linear_axis(double least, double most, int about = 5);

/// Whole decades around positive data; at least one decade, at most twelve (the smallest values fall off). Nothing
/// positive gives 1 to 10.
Axis log_axis(double least_positive, double most);

}
