#include "text/axis.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::text {
namespace {

/// 10 to a whole power, the double nearest to it for -22..22.
double power_of_ten(int exponent)
{
    double power = 1.0;
    for (int i = 0; i < std::abs(exponent); ++i) power *= 10.0;
    return exponent < 0 ? 1.0 / power : power;
}

/// Largest whole exponent whose power of ten is not above the value.
int decade_of(double value)
{
    int exponent = 0;
    while (exponent < 300 && power_of_ten(exponent + 1) <= value) ++exponent;
    while (exponent > -300 && power_of_ten(exponent) > value) --exponent;
    return exponent;
}

double round_step(double rough)
{
    const double decade = power_of_ten(decade_of(rough));
    for (const double factor : {1.0, 2.0, 5.0})
        if (rough <= factor * decade * (1.0 + 1e-9)) return factor * decade;
    return 10.0 * decade;
}

}

double Axis::share(double value) const
{
    if (is_log) return value > 0.0 ? std::clamp(steady::log(value / least) / steady::log(most / least), 0.0, 1.0) : 0.0;
    return std::clamp((value - least) / (most - least), 0.0, 1.0);
}

Axis linear_axis(double least, double most, int about)
{
    insist(about >= 2 && about <= 20, "an axis has two to twenty steps");
    insist(std::isfinite(least) && std::isfinite(most) && least <= most, "an axis spans finite values, the least first");
    const double low = std::min(least, 0.0), high = std::max(most, 0.0);
    if (high == low) return {0.0, 1.0, false, {0.0, 0.5, 1.0}};

    const double step = round_step((high - low) / about);
    const double first = std::floor(low / step + 1e-9), last = std::ceil(high / step - 1e-9);
    Axis axis{first * step, last * step, false, {}};
    for (double k = first; k <= last; k += 1.0) axis.ticks.push_back(k * step);
    return axis;
}

Axis log_axis(double least_positive, double most)
{
    if (!(least_positive > 0.0) || !(most >= least_positive) || !std::isfinite(most)) return {1.0, 10.0, true, {1.0, 10.0}};
    int first = decade_of(least_positive);
    int last = decade_of(most);
    if (power_of_ten(last) < most || last == first) ++last;
    first = std::max(first, last - 12);
    Axis axis{power_of_ten(first), power_of_ten(last), true, {}};
    for (int exponent = first; exponent <= last; ++exponent) axis.ticks.push_back(power_of_ten(exponent));
    return axis;
}

}
