#include "text/ramp.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::text {
namespace {

constexpr double degree = 3.14159265358979323846 / 180.0;

std::uint8_t channel(double linear)
{
    const double c = std::clamp(linear, 0.0, 1.0);
    const double coded = c <= 0.0031308 ? 12.92 * c : 1.055 * steady::pow(c, 1.0 / 2.4) - 0.055;
    return static_cast<std::uint8_t>(coded * 255.0 + 0.5);
}

double linear(std::uint8_t channel)
{
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : steady::pow((c + 0.055) / 1.055, 2.4);
}

double cube(double x) { return x * x * x; }
double cube_root(double x) { return x > 0.0 ? steady::pow(x, 1.0 / 3.0) : 0.0; }

/// Ottosson 2020, the two matrices of "Converting from OKLab to linear sRGB".
Rgb from_ok_lab(const OkLab& color)
{
    const double l = cube(color.lightness + 0.3963377774 * color.a + 0.2158037573 * color.b);
    const double m = cube(color.lightness - 0.1055613458 * color.a - 0.0638541728 * color.b);
    const double s = cube(color.lightness - 0.0894841775 * color.a - 1.2914855480 * color.b);
    return {channel(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
            channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
            channel(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)};
}

}

OkLab ok_lab(Rgb color)
{
    const double r = linear(color.red), g = linear(color.green), b = linear(color.blue);
    const double l = cube_root(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
    const double m = cube_root(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
    const double s = cube_root(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
    return {0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s, 1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s};
}

Rgb dust_color(double share)
{
    const double t = share > 0.0 ? std::min(share, 1.0) : 0.0;
    // Part of a circle in the plane of the two color axes, run through at an even pace while the lightness falls evenly: so
    // all steps are equally large. It stays inside sRGB all the way.
    constexpr double center_a = 0.043, center_b = 0.056, radius = 0.052;
    const double angle = (175.0 - 250.0 * t) * degree;
    return from_ok_lab({0.95 - 0.70 * t, center_a + radius * steady::cos(angle), center_b + radius * steady::sin(angle)});
}

double share_of_decades(double level, double least, double most)
{
    insist(least > 0.0 && least < most, "a ramp of decades goes from a positive level to a larger one");
    if (!(level > least)) return 0.0;
    if (level >= most) return 1.0;
    return steady::log(level / least) / steady::log(most / least);
}

}
