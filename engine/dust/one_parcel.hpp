#pragma once

#include "dust/step_table.hpp"

#include <cstddef>
#include <cstdint>

namespace flapdoor::dust {

/// A parcel on its way.
struct Parcel {
    float x = 0.0F, y = 0.0F, z = 0.0F;
    float floor = 0.0F;             ///< height of what stands below it
    int column = 0, row = 0;
    std::uint64_t number = 0;
    std::uint32_t step = 0;
    SizeClass size = SizeClass::um_0_5;
};

/// One transport step. This is the meaning of `advance`; whatever carries several parcels at once must give the same bits.
/// @return  the fate after it
Fate take_step(Parcel& parcel, const StepTable& table, std::uint64_t seed);

/// Entry i of the cloud as a parcel, and back with its fate at the end of the spell.
Parcel parcel_of(const Cloud& cloud, std::size_t i, const StepTable& table);
void put_back(Cloud& cloud, std::size_t i, const Parcel& parcel, Fate fate, const StepTable& table);

}
