#pragma once

#include <cstdint>
#include <string>

namespace flapdoor::rules {

/// An exact share, kept in lowest terms: 83/104, never 0.798.
struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;   ///< above 0

    friend bool operator==(const Fraction&, const Fraction&) = default;
};

/// Insists on a positive denominator.
Fraction reduced(std::int64_t numerator, std::int64_t denominator);

/// Exact comparison; both below 2^31 in size, as scores are.
bool is_less(Fraction a, Fraction b);

double value(Fraction share);

/// In percent with one decimal, halves rounded up: "79.8 %". For shares from 0 up.
std::string percent_text(Fraction share);

/// Points counted in quarters, so that three quarters of a whole weight stay exact.
struct Quarters {
    std::int64_t count = 0;

    friend constexpr auto operator<=>(Quarters, Quarters) = default;
    friend constexpr Quarters operator+(Quarters a, Quarters b) { return {a.count + b.count}; }
    friend constexpr Quarters operator-(Quarters a, Quarters b) { return {a.count - b.count}; }
};

constexpr Quarters whole_points(std::int64_t points) { return {4 * points}; }

/// "20.75", "26": no more decimals than needed.
std::string points_text(Quarters points);

}
