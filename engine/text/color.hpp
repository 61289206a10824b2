#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace flapdoor::text {

/// A color of a screen or page, sRGB.
struct Rgb {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend auto operator<=>(const Rgb&, const Rgb&) = default;
};

std::string to_hex(Rgb color);      ///< `#0F5A5E`

/// Contrast of two colors, 1 to 21. Source: WCAG 2.1, "contrast ratio" and "relative luminance".
double contrast(Rgb a, Rgb b);

/// The colors of every page of ours.
namespace ink {
inline constexpr Rgb paper{255, 255, 255};
inline constexpr Rgb text{0x1F, 0x2B, 0x33};        ///< dark slate
inline constexpr Rgb muted{0x52, 0x61, 0x6B};
inline constexpr Rgb line{0x7A, 0x87, 0x8F};
inline constexpr Rgb faint{0xE6, 0xEA, 0xEC};       ///< grid lines and stripes, never alone
inline constexpr Rgb accent{0x0F, 0x5A, 0x5E};      ///< deep teal
inline constexpr Rgb caution{0x8A, 0x5A, 0x00};     ///< muted amber; always beside a word or a mark
}

}
