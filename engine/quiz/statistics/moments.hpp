#pragma once

#include <optional>
#include <vector>

namespace flapdoor::quiz {

/// Insists on a list that is not empty, as do all here.
double mean_of(const std::vector<double>& values);

/// Mean square distance from the mean, divided by N.
double variance_of(const std::vector<double>& values);

/// The same divided by N - 1; nothing for a single value.
std::optional<double> sample_variance_of(const std::vector<double>& values);

/// Pearson's r of two lists of one length; nothing where one of them does not vary.
std::optional<double> correlation_of(const std::vector<double>& a, const std::vector<double>& b);

/// Reliability of a paper `times` as long, from that of this one: n r / (1 + (n - 1) r) (Spearman-Brown).
double lengthened(double reliability, double times);

/// How many times as long a paper must be for the reliability `wanted`: w (1 - r) / (r (1 - w)). Insists on both strictly
/// between 0 and 1.
double lengthening_for(double reliability, double wanted);

}
