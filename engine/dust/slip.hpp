#pragma once

#include "core/quantity.hpp"

#include <cstdint>

namespace flapdoor::dust {

/// Constants of the slip correction. They differ by at most 1.4 % from 1 um up; the model uses iso_15900.
enum class SlipSet : std::uint8_t {
    iso_15900,          ///< Kim et al. 2005: 1.165, 0.483, 0.997 (from memory)
    allen_raabe_1985,   ///< 1.142, 0.558, 0.999 (from memory)
    davies_1945,        ///< 1.257, 0.400, 1.10 (University of Florida aerosol course pages)
};

/// Cunningham's slip correction, 1 + Kn (a + b exp(-c/Kn)) with Kn = 2 lambda/d: how much less drag a particle has that
/// is not much larger than the free path of the molecules. 1 or more, falling with size.
/// @param diameter  above 0; insists
double slip_correction(Length diameter, Length free_path, SlipSet set = SlipSet::iso_15900);

}
