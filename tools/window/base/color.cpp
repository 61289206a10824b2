#include "window/base/color.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

double linear(std::uint8_t channel)
{
    const double c = static_cast<double>(channel) / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

std::uint8_t between(std::uint8_t from, std::uint8_t to, double share)
{
    return static_cast<std::uint8_t>(static_cast<double>(from) + (static_cast<double>(to) - static_cast<double>(from)) * share + 0.5);
}

}

Color mixed(Color from, Color to, double share)
{
    const double s = std::clamp(share, 0.0, 1.0);
    return {between(from.r, to.r, s), between(from.g, to.g, s), between(from.b, to.b, s), between(from.a, to.a, s)};
}

Color laid_over(Color top, Color ground)
{
    const double share = static_cast<double>(top.a) / 255.0;
    top.a = 255;
    ground.a = 255;
    return mixed(ground, top, share);
}

double luminance(Color c) { return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b); }

double contrast(Color a, Color b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}
