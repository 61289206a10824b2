#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace flapdoor::dust {

/// Ten classes of dust by aerodynamic diameter (unit density, ISO 15900 sense), each named for its lower edge in
/// micrometers. The first five decide what is breathed and what rides in ducts, the next four what a wipe finds;
/// chips are picked up by hand.
enum class SizeClass : std::uint8_t { um_0_5, um_1, um_2_5, um_5, um_10, um_20, um_40, um_80, um_160, chips };

inline constexpr std::size_t class_count = 10;

/// Smallest to largest, for range-for: the order of every sum over classes.
constexpr std::array<SizeClass, class_count> all_classes()
{
    using enum SizeClass;
    return {um_0_5, um_1, um_2_5, um_5, um_10, um_20, um_40, um_80, um_160, chips};
}

/// One T for each size class, smallest first.
template <class T>
struct PerClass {
    std::array<T, class_count> values{};

    constexpr T& operator[](SizeClass size) { return values[static_cast<std::size_t>(size)]; }
    constexpr const T& operator[](SizeClass size) const { return values[static_cast<std::size_t>(size)]; }
    constexpr auto begin() { return values.begin(); }
    constexpr auto end() { return values.end(); }
    constexpr auto begin() const { return values.begin(); }
    constexpr auto end() const { return values.end(); }

    friend constexpr bool operator==(const PerClass&, const PerClass&) = default;
};

/// Dust ends and chips begin here.
inline constexpr Length largest_dust = 500.0_um;

namespace detail {
inline constexpr std::array<Length, class_count + 1> class_edges = {
    0.5_um, 1.0_um, 2.5_um, 5.0_um, 10.0_um, 20.0_um, 40.0_um, 80.0_um, 160.0_um, largest_dust, 2000.0_um};

// Log-midpoints: the square root of the product of the edges.
inline constexpr PerClass<Length> typical_diameters = {{0.70711_um, 1.5811_um, 3.5355_um, 7.0711_um, 14.142_um, 28.284_um, 56.569_um,
                                                        113.14_um, 282.84_um, 1000.0_um}};
}

constexpr Length lower_edge(SizeClass size) { return detail::class_edges[static_cast<std::size_t>(size)]; }

/// For chips 2 mm: no edge of anything, only the far end of the range that the drag curve covers.
constexpr Length upper_edge(SizeClass size) { return detail::class_edges[static_cast<std::size_t>(size) + 1]; }

/// The one aerodynamic diameter that stands for a class: the geometric mean of its edges.
constexpr Length typical_diameter(SizeClass size) { return detail::typical_diameters[size]; }

/// The class that holds a diameter, lower edge included. Below 0.5 um the first class, from 500 um on chips.
constexpr SizeClass class_of(Length diameter)
{
    SizeClass found = SizeClass::um_0_5;
    for (const SizeClass size : all_classes())
        if (diameter >= lower_edge(size)) found = size;
    return found;
}

}

namespace flapdoor {
template <>
struct Words<dust::SizeClass> {
    static constexpr std::array<std::string_view, dust::class_count> words = {
        "0.5-1 um", "1-2.5 um", "2.5-5 um", "5-10 um", "10-20 um", "20-40 um", "40-80 um", "80-160 um", "160-500 um", "chips"};
};
}
