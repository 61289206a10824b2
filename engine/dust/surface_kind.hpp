#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "dust/band.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace flapdoor::dust {

/// Surfaces by how they hold dust and how they let it go.
enum class SurfaceKind : std::uint8_t { smooth_sealed, worn_linoleum, bare_wood, deteriorated, carpet_fresh, carpet_old };
inline constexpr std::size_t surface_kind_count = 6;

/// Time a nozzle spends on an area, s/m2.
using Exposure = Quantity<-2, 1>;

/// Share lost per exposure, m2/s.
using CleaningRate = Quantity<2, -1>;

/// Published efficiencies count exposure in min/m2.
constexpr Exposure minutes_per_m2(double minutes) { return {60.0 * minutes}; }
constexpr CleaningRate per_minute_per_m2(double rate) { return {rate / 60.0}; }

/// How one kind of surface gives up dust. Sources in docs/model.md, "Cleaning"; wet figures and bands are judgment.
struct SurfaceTraits {
    Band bound_share;            ///< of what lies there: in cracks or pile, out of reach of dry suction
    CleaningRate vacuum;         ///< k of free dust of 20 um and more
    double wet_free;             ///< share of the free dust that one wet wash takes; 0 where nobody washes
    double wet_bound;            ///< share of the bound dust
    bool is_carpet;
};

const SurfaceTraits& surface_traits(SurfaceKind kind);

}

namespace flapdoor {
template <>
struct Words<dust::SurfaceKind> {
    static constexpr std::array<std::string_view, dust::surface_kind_count> words = {
        "smooth sealed", "worn linoleum", "bare wood", "deteriorated", "fresh carpet", "old carpet"};
};
}
