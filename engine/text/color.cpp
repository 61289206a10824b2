#include "text/color.hpp"

#include "core/steady.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::text {
namespace {

double linear(std::uint8_t channel)
{
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : steady::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(Rgb c) { return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue); }

}

std::string to_hex(Rgb color) { return fmt::format("#{:02X}{:02X}{:02X}", color.red, color.green, color.blue); }

double contrast(Rgb a, Rgb b)
{
    const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
    return (light + 0.05) / (dark + 0.05);
}

}
