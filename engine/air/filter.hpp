#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace flapdoor::air {

/// Filter of an air handler, by the minimum efficiency grades of ASHRAE 52.2.
enum class FilterGrade : std::uint8_t { none, merv_8, merv_13, hepa };

/// Share caught in one pass. MERV figures are the minimum of the band 0.3-1, 1-3 or 3-10 um that holds the diameter
/// (ASHRAE 52.2, from memory); above 10 um the 3-10 um figure is kept. HEPA: 99.97 % at 0.3 um, its defining size.
/// @param diameter  aerodynamic, 0.3 um or more; smaller ones count as 0.3 um
double filter_efficiency(FilterGrade grade, Length diameter);

}

namespace flapdoor {
template <>
struct Words<air::FilterGrade> {
    static constexpr std::array<std::string_view, 4> words = {"none", "MERV 8", "MERV 13", "HEPA"};
};
}
