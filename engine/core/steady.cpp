#include "core/steady.hpp"

#include "core/insist.hpp"

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>

namespace flapdoor::inline core::steady {

namespace {

constexpr double ln2_high = 6.93147180369123816490e-01;   // ln 2 split so that k * ln2_high is exact for |k| < 2^20
constexpr double ln2_low = 1.90821492927058770002e-10;
constexpr double half_pi_high = 1.57079632673412561417e+00;
constexpr double half_pi_low = 6.07710050650619224932e-11;

/// x * 2^k without rounding, in two factors so that subnormal results round once.
double scale(double x, int k)
{
    const auto power = [](int n) { return std::bit_cast<double>(static_cast<std::uint64_t>(n + 1023) << 52); };
    if (k > 1023) return x * power(1023) * power(k - 1023);
    if (k < -1000) return x * power(-1000) * power(k + 1000);
    return x * power(k);
}

double round_to_even(double x) { return std::nearbyint(x); }

/// Taylor series of exp(r) - 1, |r| <= ln2 / 2.
double expm1_core(double r)
{
    double sum = 0.0;
    for (int n = 14; n >= 2; --n) sum = (sum + 1.0) * (r / n);
    return r + r * sum;
}

double sin_core(double x)
{
    const double x2 = x * x;
    double sum = 0.0;
    for (int n = 20; n >= 2; n -= 2) sum = -(x2 / (n * (n + 1))) * (1.0 + sum);
    return x + x * sum;
}

double cos_core(double x)
{
    const double x2 = x * x;
    double sum = 0.0;
    for (int n = 19; n >= 1; n -= 2) sum = -(x2 / (n * (n + 1))) * (1.0 + sum);
    return 1.0 + sum;
}

/// Quarter turns in x and what is left, |rest| <= pi / 4.
struct Turned {
    int quarter;
    double rest;
};

Turned turn(double x)
{
    insist(std::fabs(x) <= 1e5, "an angle is at most 1e5 rad");
    const double k = round_to_even(x / (half_pi_high + half_pi_low));
    return {static_cast<int>(static_cast<std::int64_t>(k) & 3), (x - k * half_pi_high) - k * half_pi_low};
}

double of_quarter(int quarter, double rest)
{
    switch (quarter & 3) {
        case 0: return sin_core(rest);
        case 1: return cos_core(rest);
        case 2: return -sin_core(rest);
        default: return -cos_core(rest);
    }
}

}

double exp(double x)
{
    if (x != x) return x;
    if (x > 709.782712893384) return std::numeric_limits<double>::infinity();
    if (x < -745.2) return 0.0;
    const double k = round_to_even(x / (ln2_high + ln2_low));
    const double r = (x - k * ln2_high) - k * ln2_low;
    return scale(1.0 + expm1_core(r), static_cast<int>(k));
}

double expm1(double x)
{
    if (std::fabs(x) < 0.34) return expm1_core(x);
    return exp(x) - 1.0;
}

double log(double x)
{
    insist(x > 0.0, "log of a positive number");
    int k = 0;
    double m = std::frexp(x, &k);   // exact
    if (m < 0.70710678118654752440) {
        m *= 2.0;
        --k;
    }
    const double s = (m - 1.0) / (m + 1.0);
    const double s2 = s * s;
    double sum = 0.0;
    for (int n = 23; n >= 3; n -= 2) sum = s2 * (1.0 / n + sum);
    const double log_m = 2.0 * s + 2.0 * s * sum;
    return k * ln2_high + (log_m + k * ln2_low);
}

double pow(double base, double exponent)
{
    if (base == 0.0) {
        insist(exponent > 0.0, "zero is raised to positive powers only");
        return 0.0;
    }
    return exp(exponent * log(base));
}

double sin(double x)
{
    const Turned t = turn(x);
    return of_quarter(t.quarter, t.rest);
}

double cos(double x)
{
    const Turned t = turn(x);
    return of_quarter(t.quarter + 1, t.rest);
}

double atan(double x)
{
    if (x < 0.0) return -atan(-x);
    if (x > 1.0) return (half_pi_high + half_pi_low) - atan(1.0 / x);
    // Halving the angle twice brings the argument below 0.2, where the series is short.
    const double y = x / (1.0 + std::sqrt(1.0 + x * x));
    const double z = y / (1.0 + std::sqrt(1.0 + y * y));
    const double z2 = z * z;
    double sum = 0.0;
    for (int n = 25; n >= 3; n -= 2) sum = -z2 * (1.0 / n + sum);
    return 4.0 * (z + z * sum);
}

double normal_cdf(double x)
{
    if (x < -38.0) return 0.0;
    if (x > 9.0) return 1.0;
    constexpr double root_two_pi = 2.50662827463100050242;
    if (x < -6.0) {   // continued fraction of the tail (Abramowitz & Stegun 26.2.14)
        const double t = -x;
        double fraction = t;
        for (int n = 60; n >= 1; --n) fraction = t + n / fraction;
        return exp(-0.5 * x * x) / (root_two_pi * fraction);
    }
    double term = x;   // Abramowitz & Stegun 26.2.11
    double sum = x;
    for (int n = 1; n < 300; ++n) {
        term *= x * x / (2 * n + 1);
        sum += term;
    }
    return 0.5 + sum * exp(-0.5 * x * x) / root_two_pi;
}

double normal_deviate(double share, double most)
{
    double low = -most;
    double high = most;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (normal_cdf(middle) < share ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

}
