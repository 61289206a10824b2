#include "dust/lognormal.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

namespace flapdoor::dust {

namespace {

double square(double x) { return x * x; }

}

double hatch_choate(Average average, double gsd)
{
    insist(gsd >= 1.0, "a geometric standard deviation is 1 or more");
    constexpr std::array<double, 5> exponents = {0.5, 2.0, 1.5, 2.5, 3.0};
    return steady::exp(exponents[static_cast<std::size_t>(average)] * square(steady::log(gsd)));
}

double mean_over_median(double gsd) { return hatch_choate(Average::arithmetic_mean, gsd); }

double share_below(const Lognormal& sizes, Length diameter)
{
    insist(sizes.median.si > 0.0 && sizes.gsd > 1.0, "a spread of sizes has a median and a width");
    if (diameter.si <= 0.0) return 0.0;
    return steady::normal_cdf(steady::log(diameter / sizes.median) / steady::log(sizes.gsd));
}

Length diameter_below(const Lognormal& sizes, double share)
{
    insist(share > 0.0 && share < 1.0, "a share of the mass lies strictly between none and all");
    double low = -12.0;   // in standard deviations
    double high = 12.0;
    for (int i = 0; i < 80; ++i) {
        const double middle = 0.5 * (low + high);
        (steady::normal_cdf(middle) < share ? low : high) = middle;
    }
    return sizes.median * steady::pow(sizes.gsd, 0.5 * (low + high));
}

PerClass<double> dust_shares(const Lognormal& sizes)
{
    const double whole = share_below(sizes, largest_dust);
    insist(whole > 0.0, "a cloud has some dust in it");
    PerClass<double> shares;
    double below = 0.0;
    for (const SizeClass size : all_classes()) {
        if (size == SizeClass::chips) break;
        const double up_to = share_below(sizes, upper_edge(size));
        shares[size] = (up_to - below) / whole;
        below = up_to;
    }
    return shares;
}

}
