#include "quiz/statistics/moments.hpp"

#include "core/insist.hpp"

#include <cmath>
#include <cstddef>

namespace flapdoor::quiz {

namespace {

/// Below this share of the mean square, what looks like a spread is rounding.
constexpr double rounding = 1e-20;

double squares_about_mean(const std::vector<double>& values)
{
    const double mean = mean_of(values);
    double sum = 0.0, sizes = 0.0;
    for (const double value : values) {
        sum += (value - mean) * (value - mean);
        sizes += value * value;
    }
    return sum <= rounding * sizes ? 0.0 : sum;
}

}

double mean_of(const std::vector<double>& values)
{
    insist(!values.empty(), "an empty list has no mean");
    double sum = 0.0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

double variance_of(const std::vector<double>& values) { return squares_about_mean(values) / static_cast<double>(values.size()); }

std::optional<double> sample_variance_of(const std::vector<double>& values)
{
    if (values.size() < 2) return std::nullopt;
    return squares_about_mean(values) / static_cast<double>(values.size() - 1);
}

std::optional<double> correlation_of(const std::vector<double>& a, const std::vector<double>& b)
{
    insist(a.size() == b.size(), "a correlation is of pairs");
    const double of_a = squares_about_mean(a), of_b = squares_about_mean(b);
    if (of_a <= 0.0 || of_b <= 0.0) return std::nullopt;
    const double mean_a = mean_of(a), mean_b = mean_of(b);
    double products = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) products += (a[i] - mean_a) * (b[i] - mean_b);
    return products / std::sqrt(of_a * of_b);
}

double lengthened(double reliability, double times) { return times * reliability / (1.0 + (times - 1.0) * reliability); }

double lengthening_for(double reliability, double wanted)
{
    insist(reliability > 0.0 && reliability < 1.0 && wanted > 0.0 && wanted < 1.0, "reliabilities lie between 0 and 1");
    return wanted * (1.0 - reliability) / (reliability * (1.0 - wanted));
}

}
