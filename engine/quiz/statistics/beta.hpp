#pragma once

namespace flapdoor::quiz {

/// Share of a beta distribution below x: the regularized incomplete beta function. Absolute error below 1e-12 on the
/// parameters tested. @param a, b  above 0; insists. @param x  clamped to 0 to 1
/// Source: continued fraction DLMF 8.17.22 (memory), evaluated by Lentz's method.
double beta_cdf(double a, double b, double x);

/// The x below which the share p lies. @param p  0 to 1; insists
double beta_quantile(double a, double b, double p);

/// The same of the F distribution with d1 and d2 degrees of freedom. @param p  0 to 1, 1 not included; insists
double f_quantile(double d1, double d2, double p);

}
