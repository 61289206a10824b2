#pragma once

#include "core/picograms.hpp"
#include "dust/size_class.hpp"

namespace flapdoor::dust {

/// What lies on one patch of a surface, or rides in a sole, a cloth, a bag.
struct Load {
    PerClass<Amount> free;    ///< what a sole or a cloth can take; never negative
    PerClass<Amount> bound;   ///< in cracks or pile; only wetting or a beater bar moves it to `free`
};

/// Everything in a load: free and bound, all classes.
Amount total(const Load& load);

/// Without chips: what can fly, smear and be wiped.
Amount dust_only(const Load& load);

}
