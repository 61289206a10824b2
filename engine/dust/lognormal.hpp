#pragma once

#include "dust/size_class.hpp"

namespace flapdoor::dust {

/// A spread of sizes by mass: the logarithm of the diameter is normal.
struct Lognormal {
    Length median{12.0e-6};   ///< half the mass is finer; MMAD when the diameter is aerodynamic. Above 0
    double gsd = 2.2;         ///< geometric standard deviation, above 1

    friend bool operator==(const Lognormal&, const Lognormal&) = default;
};

/// The cloud of most activities: best fit to 90 % of airborne lead gone in one hour in a stirred chamber
/// (Choe et al. 2000, abstract; fit recomputed). MMAD 8.5, 11.1, 14.1, 17.3 um would do for GSD 1.5, 2, 2.5, 3.
inline constexpr Lognormal usual_cloud{};

/// Which average of a count distribution the Hatch-Choate equations give; the value is b in exp(b ln^2 GSD).
enum class Average { arithmetic_mean, surface_median, mean_mass, sauter_mean, mass_median };

/// Ratio of an average to the count median diameter: exp(b ln^2 GSD), b = 0.5, 2, 1.5, 2.5, 3.
/// Source: Hatch & Choate 1929 (recomputed).
double hatch_choate(Average average, double gsd);

/// Arithmetic mean over geometric mean of anything lognormal: exp(0.5 ln^2 GSD).
double mean_over_median(double gsd);

/// Share of the mass below a diameter, 0 to 1.
double share_below(const Lognormal& sizes, Length diameter);

/// The diameter below which a share of the mass lies, by bisection.
/// @param share  above 0 and below 1; insists
Length diameter_below(const Lognormal& sizes, double share);

/// Share of the mass in each class of dust, cut at 500 um and scaled up to a whole: adds up to 1, chips get none. What is
/// finer than 0.5 um is counted with the first class.
PerClass<double> dust_shares(const Lognormal& sizes);

}
