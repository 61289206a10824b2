#pragma once

#include "core/quantity.hpp"

namespace flapdoor::rules {

/// The highest mean of lead in the air of a shift: 50 ug/m3 up to 8 h, beyond that 400 ug/m3 divided by the hours.
/// Source: 29 CFR 1926.62(c)(1), (2).
constexpr Density allowed_mean(Time shift)
{
    constexpr Density limit = 50e-9_kgpm3;
    return shift <= 8.0_h ? limit : limit * (8.0_h / shift);
}

}
