#include "core/steady.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <numbers>

using namespace flapdoor;

// The yardstick is the long double function of the C library: 64 bits of mantissa on the machines that build this, so its own
// error is far below one unit in the last place of a double.
static_assert(std::numeric_limits<long double>::digits >= 64);

namespace {

/// Distance to the true value in units of the last place of a double that big.
double units_off(double found, long double truth)
{
    const auto near = static_cast<double>(truth);
    const double unit = std::nextafter(std::fabs(near), std::numeric_limits<double>::infinity()) - std::fabs(near);
    return static_cast<double>(std::fabs(static_cast<long double>(found) - truth) / static_cast<long double>(unit));
}

/// Largest distance on an even sweep that hits no round numbers.
double worst(double least, double most, const auto& ours, const auto& truth)
{
    constexpr int points = 40'011;
    double most_off = 0.0;
    for (int i = 0; i < points; ++i) {
        const double x = least + (most - least) * ((i + 0.37) / points);
        most_off = std::fmax(most_off, units_off(ours(x), truth(static_cast<long double>(x))));
    }
    return most_off;
}

double worst_power(double least_base, double most_base, double exponent)
{
    return worst(
        least_base, most_base, [&](double x) { return steady::pow(x, exponent); },
        [&](long double x) { return std::pow(x, static_cast<long double>(exponent)); });
}

constexpr auto exp_truth = [](long double x) { return std::exp(x); };
constexpr auto log_truth = [](long double x) { return std::log(x); };
constexpr auto sin_truth = [](long double x) { return std::sin(x); };
constexpr auto cos_truth = [](long double x) { return std::cos(x); };
constexpr auto atan_truth = [](long double x) { return std::atan(x); };

}

TEST_CASE("exp is within four units in the last place, to the ends of its range")
{
    CHECK(worst(-1.0, 1.0, steady::exp, exp_truth) <= 4.0);
    CHECK(worst(-30.0, 30.0, steady::exp, exp_truth) <= 4.0);
    CHECK(worst(-708.0, 709.7, steady::exp, exp_truth) <= 4.0);
    CHECK(steady::exp(0.0) == 1.0);
    CHECK(steady::exp(-745.2001) == 0.0);
    CHECK(steady::exp(-745.0) > 0.0);   // the smallest subnormal
    CHECK(steady::exp(709.7827) < std::numeric_limits<double>::infinity());
    CHECK(steady::exp(709.8) == std::numeric_limits<double>::infinity());
    CHECK(std::isnan(steady::exp(std::numeric_limits<double>::quiet_NaN())));
}

TEST_CASE("expm1 keeps its digits near zero")
{
    const auto truth = [](long double x) { return std::expm1(x); };
    CHECK(worst(-1e-9, 1e-9, steady::expm1, truth) <= 4.0);
    CHECK(worst(-0.34, 0.34, steady::expm1, truth) <= 4.0);
    CHECK(worst(-40.0, 40.0, steady::expm1, truth) <= 4.0);
    CHECK(steady::expm1(0.0) == 0.0);
}

TEST_CASE("log is within four units in the last place, beside 1 too")
{
    CHECK(worst(0.999, 1.001, steady::log, log_truth) <= 4.0);
    CHECK(worst(0.1, 10.0, steady::log, log_truth) <= 4.0);
    CHECK(worst(1e-300, 1e-290, steady::log, log_truth) <= 4.0);
    CHECK(worst(1e9, 1e300, steady::log, log_truth) <= 4.0);
    CHECK(steady::log(1.0) == 0.0);
    CHECK(units_off(steady::log(5e-324), std::log(static_cast<long double>(5e-324))) <= 4.0);
    CHECK_THROWS_AS(steady::log(0.0), BrokenPromise);
    CHECK_THROWS_AS(steady::log(-1.0), BrokenPromise);
}

TEST_CASE("pow is good to the powers and ranges that the model takes")
{
    CHECK(worst_power(0.1, 10.0, 2.0 / 3.0) <= 4.0);
    CHECK(worst_power(0.1, 10.0, -0.65) <= 4.0);
    CHECK(worst_power(0.5, 2.0, 3.0) <= 4.0);
    // exp(e log b) carries the rounding of e log b: farther out only the relative error is promised.
    CHECK(worst_power(1e-6, 1e6, 2.0 / 3.0) <= 16.0);
    CHECK(worst_power(1e4, 1e6, 2.3) <= 64.0);
    CHECK(steady::pow(0.0, 0.5) == 0.0);
    CHECK(steady::pow(7.0, 0.0) == 1.0);
    CHECK_THROWS_AS(steady::pow(0.0, 0.0), BrokenPromise);
    CHECK_THROWS_AS(steady::pow(-2.0, 2.0), BrokenPromise);
}

TEST_CASE("sine and cosine are within four units in the last place where they are not near zero")
{
    CHECK(worst(-0.78, 0.78, steady::sin, sin_truth) <= 4.0);
    CHECK(worst(0.8, 2.3, steady::sin, sin_truth) <= 4.0);
    CHECK(worst(-0.78, 0.78, steady::cos, cos_truth) <= 4.0);
    CHECK(worst(2.4, 3.9, steady::cos, cos_truth) <= 4.0);
    CHECK_THROWS_AS(steady::sin(1.1e5), BrokenPromise);
    CHECK_THROWS_AS(steady::cos(-1.1e5), BrokenPromise);
}

TEST_CASE("sine and cosine stay within 1e-10 of the truth out to 1e5 radians")
{
    double off = 0.0;
    for (int i = 0; i < 20'011; ++i) {
        const double x = -1e5 + 2e5 * ((i + 0.37) / 20'011);
        off = std::fmax(off, std::fabs(steady::sin(x) - std::sin(x)));
        off = std::fmax(off, std::fabs(steady::cos(x) - std::cos(x)));
    }
    CHECK(off < 1e-10);
}

TEST_CASE("atan is within four units in the last place and odd")
{
    CHECK(worst(-1.0, 1.0, steady::atan, atan_truth) <= 4.0);
    CHECK(worst(1.0, 1e6, steady::atan, atan_truth) <= 4.0);
    CHECK(steady::atan(-0.3) == -steady::atan(0.3));
    CHECK(steady::atan(1e300) == Approx(std::numbers::pi / 2).epsilon(1e-15));
}

TEST_CASE("the normal distribution is good to 1e-14, its far tail to twelve digits")
{
    double off = 0.0;
    for (double x = -9.3; x < 9.3; x += 0.0137) off = std::fmax(off, std::fabs(steady::normal_cdf(x) - 0.5 * std::erfc(-x / std::numbers::sqrt2)));
    CHECK(off < 1e-14);
    for (const double x : {-37.0, -20.0, -8.0, -6.01}) CHECK(steady::normal_cdf(x) == Approx(0.5 * std::erfc(-x / std::numbers::sqrt2)).epsilon(1e-12));
    CHECK(steady::normal_cdf(0.0) == 0.5);
    CHECK(steady::normal_cdf(-40.0) == 0.0);
    CHECK(steady::normal_cdf(40.0) == 1.0);
}

TEST_CASE("printed values of the tables come out")
{
    // Abramowitz & Stegun 1964, tables 1.1 and 26.1.
    CHECK(steady::exp(1.0) == Approx(2.718281828459045235).epsilon(1e-15));
    CHECK(steady::log(2.0) == Approx(0.693147180559945309).epsilon(1e-15));
    CHECK(steady::log(10.0) == Approx(2.302585092994045684).epsilon(1e-15));
    CHECK(4.0 * steady::atan(1.0) == Approx(3.141592653589793238).epsilon(1e-15));
    CHECK(steady::normal_cdf(1.0) == Approx(0.841344746068543).epsilon(1e-14));
    CHECK(steady::normal_cdf(2.0) == Approx(0.977249868051821).epsilon(1e-14));
}
