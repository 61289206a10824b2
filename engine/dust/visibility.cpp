#include "dust/visibility.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <array>
#include <cmath>

namespace flapdoor::dust {

double area_coverage(Loading loading, Length diameter, Density material)
{
    insist(diameter.si > 0.0 && material.si > 0.0 && loading.si >= 0.0, "dust has a size and a density");
    return loading / monolayer(diameter, material);
}

double area_coverage(const PerClass<Loading>& loading, Density material)
{
    const double shrink = std::sqrt(material.si / 1000.0);
    double sum = 0.0;
    for (const SizeClass size : all_classes()) sum += area_coverage(loading[size], typical_diameter(size) / shrink, material);
    return sum;
}

Loading monolayer(Length diameter, Density material) { return material * diameter * (2.0 / 3.0); }

double contrast_factor(Background background)
{
    constexpr std::array<double, 4> factors = {1.0, 2.0, 5.0, 10.0};
    return factors[static_cast<std::size_t>(background)];
}

double light_factor(Light light) { return light == Light::raking ? 0.25 : 1.0; }

double seen_probability(double coverage, Background background, Light light) { return seen_probability(coverage, background, light_factor(light)); }

double seen_probability(double coverage, Background background, double light)
{
    insist(coverage >= 0.0 && light > 0.0, "coverage is not negative, and there is some light");
    if (coverage == 0.0) return 0.0;
    const double half_seen = just_seen * contrast_factor(background) * light;
    const double slope = 2.0 * steady::log(9.0) / steady::log(4.0);   // logit(0.9) - logit(0.1) = 2 ln 9
    return 1.0 / (1.0 + steady::exp(-slope * steady::log(coverage / half_seen)));
}

}
