#include "rules/fraction.hpp"

#include "core/insist.hpp"

#include <fmt/format.h>

#include <array>
#include <numeric>
#include <string_view>

namespace flapdoor::rules {

Fraction reduced(std::int64_t numerator, std::int64_t denominator)
{
    insist(denominator > 0, "a share has a positive denominator");
    const std::int64_t common = std::gcd(numerator, denominator);
    return {numerator / common, denominator / common};
}

bool is_less(Fraction a, Fraction b) { return a.numerator * b.denominator < b.numerator * a.denominator; }

double value(Fraction share) { return static_cast<double>(share.numerator) / static_cast<double>(share.denominator); }

std::string percent_text(Fraction share)
{
    const std::int64_t tenths = (share.numerator * 2000 + share.denominator) / (2 * share.denominator);
    return fmt::format("{}.{} %", tenths / 10, tenths % 10);
}

std::string points_text(Quarters points)
{
    static constexpr std::array<std::string_view, 4> parts{"", ".25", ".5", ".75"};
    const std::int64_t size = points.count < 0 ? -points.count : points.count;
    return fmt::format("{}{}{}", points.count < 0 ? "-" : "", size / 4, parts[static_cast<std::size_t>(size % 4)]);
}

}
