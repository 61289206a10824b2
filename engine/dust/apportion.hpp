#pragma once

#include "core/picograms.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace flapdoor::dust {

/// Cuts an amount into whole picograms by weights: the pieces add up to the amount exactly, and each is within 1 pg of
/// its share. Weights are not negative and not all zero; insists.
std::vector<Amount> apportion(Amount amount, std::span<const double> weights);

}
