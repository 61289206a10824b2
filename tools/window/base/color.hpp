#pragma once

#include <cstdint>

namespace flapdoor::window {

/// An sRGB color; `a` 0 is clear, 255 solid.
struct Color {
    std::uint8_t r = 0;
    std::uint8_t g = 0;
    std::uint8_t b = 0;
    std::uint8_t a = 255;

    friend constexpr bool operator==(Color, Color) = default;
};

/// From 0xRRGGBB.
constexpr Color color(std::uint32_t rgb)
{
    return {static_cast<std::uint8_t>(rgb >> 16), static_cast<std::uint8_t>(rgb >> 8), static_cast<std::uint8_t>(rgb), 255};
}

/// The same color, thinner. @param alpha  0 (clear) to 1 (as it is)
constexpr Color faded(Color c, double alpha)
{
    const double a = alpha < 0.0 ? 0.0 : alpha > 1.0 ? 1.0 : alpha;
    c.a = static_cast<std::uint8_t>(static_cast<double>(c.a) * a + 0.5);
    return c;
}

/// What is seen when `top` lies on a solid `ground`.
Color laid_over(Color top, Color ground);

/// Part of the way from one color to another, in sRGB. @param share  0 gives `from`, 1 gives `to`; clamped
Color mixed(Color from, Color to, double share);

/// Relative luminance, 0 (black) to 1 (white); alpha is ignored. Source: WCAG 2.2, "relative luminance".
double luminance(Color c);

/// Contrast of two solid colors, 1 to 21, whichever is the lighter. Source: WCAG 2.2, "contrast ratio".
double contrast(Color a, Color b);

}
