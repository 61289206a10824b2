#include "quiz/statistics/beta.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flapdoor::quiz {

namespace {

/// Stirling's series after shifting x beyond 10. The C library's lgamma writes a global and is no function for threads.
double log_gamma(double x)
{
    double shift = 0.0;
    for (; x < 10.0; x += 1.0) shift += steady::log(x);
    const double s = 1.0 / (x * x);
    const double series = (1.0 / 12.0 - s * (1.0 / 360.0 - s * (1.0 / 1260.0 - s * (1.0 / 1680.0 - s * (1.0 / 1188.0))))) / x;
    return (x - 0.5) * steady::log(x) - x + 0.5 * steady::log(2.0 * std::numbers::pi) + series - shift;
}

/// Converges quickly for x below (a + 1) / (a + b + 2).
double fraction(double a, double b, double x)
{
    constexpr double tiny = 1e-300;
    const auto kept = [](double value) { return std::fabs(value) < tiny ? tiny : value; };
    double c = 1.0, d = 1.0 / kept(1.0 - (a + b) * x / (a + 1.0)), result = d;
    for (int m = 1; m <= 2000; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1.0) * (a + 2 * m));
        d = 1.0 / kept(1.0 + even * d);
        c = kept(1.0 + even / c);
        result *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1.0));
        d = 1.0 / kept(1.0 + odd * d);
        c = kept(1.0 + odd / c);
        result *= d * c;
        if (std::fabs(d * c - 1.0) < 1e-16) break;
    }
    return result;
}

}

double beta_cdf(double a, double b, double x)
{
    insist(a > 0.0 && b > 0.0, "a beta distribution has positive parameters");
    if (!(x > 0.0)) return 0.0;
    if (x >= 1.0) return 1.0;
    if (x > (a + 1.0) / (a + b + 2.0)) return 1.0 - beta_cdf(b, a, 1.0 - x);
    const double front = steady::exp(log_gamma(a + b) - log_gamma(a) - log_gamma(b) + a * steady::log(x) + b * steady::log(1.0 - x));
    return std::clamp(front * fraction(a, b, x) / a, 0.0, 1.0);
}

double beta_quantile(double a, double b, double p)
{
    insist(p >= 0.0 && p <= 1.0, "a share lies between 0 and 1");
    double low = 0.0, high = 1.0;
    for (int i = 0; i < 80; ++i) {
        const double middle = 0.5 * (low + high);
        (beta_cdf(a, b, middle) < p ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double f_quantile(double d1, double d2, double p)
{
    insist(p >= 0.0 && p < 1.0, "a share lies between 0 and 1");
    const double x = beta_quantile(0.5 * d1, 0.5 * d2, p);
    return d2 * x / (d1 * (1.0 - x));
}

}
