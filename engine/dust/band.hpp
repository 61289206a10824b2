#pragma once

namespace flapdoor::dust {

/// A figure nobody knows well: what a single run takes when nothing is drawn, and the ends that a study draws between.
/// Never to be shown to a user as one number.
struct Band {
    double typical;
    double least;
    double most;

    constexpr bool holds(double value) const { return value >= least && value <= most; }
};

}
