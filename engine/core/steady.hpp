#pragma once

/// Elementary functions that give the same bits with every compiler, libm and CPU: plain IEEE arithmetic in a fixed
/// order. The model uses these and std::sqrt (exact by IEEE 754), never the others of <cmath>.
/// Accuracy: within 4 units in the last place of the true value on the ranges tested in tests/core/steady_test.cpp; pow
/// within 16 on moderate ranges, because the logarithm's error is multiplied.
namespace flapdoor::inline core::steady {

double exp(double x);              ///< 0 below -745, infinity above 709.78
double expm1(double x);
double log(double x);              ///< x > 0; insists
double pow(double base, double exponent);   ///< base > 0 (or base = 0 with exponent > 0 -> 0); insists
double sin(double x);              ///< |x| <= 1e5; insists
double cos(double x);              ///< |x| <= 1e5; insists
double atan(double x);
double normal_cdf(double x);       ///< share of a standard normal below x; absolute error < 1e-14

/// Deviate of a standard normal with a share of it below, by bisection; held to `most` either way.
double normal_deviate(double share, double most);

}
