#pragma once

#include "text/color.hpp"

namespace flapdoor::text {

/// The color of dust in maps, on screen and on paper: from pale straw over ochre and rust to a deep plum brown. Lightness
/// falls evenly from 0.95 to 0.25 in OKLab, so equal steps look equal, in gray and to color-blind eyes too.
/// Always beside a legend with its unit.
/// @param share  0 (least) to 1 (most); clamped, not-a-number counts as 0
/// Source of the color space: Ottosson 2020, "A perceptual color space for image processing".
Rgb dust_color(double share);

/// Where a level stands on a ramp of decades: 0 at `least` and below, 1 at `most` and above.
/// @param least, most  positive, least < most; insists
double share_of_decades(double level, double least, double most);

/// OKLab of a color: lightness 0 to 1, and the two color axes.
struct OkLab {
    double lightness = 0.0, a = 0.0, b = 0.0;
};
OkLab ok_lab(Rgb color);

}
