#pragma once

#include "dust/size_class.hpp"

#include <cstdint>

namespace flapdoor::dust {

/// Density of the material, for what covers an area: paint and plaster dust on a surface.
inline constexpr Density settled_density{2000.0};

/// Share of an area that spheres of one size cover: 3 M/(2 rho d). May pass 1, when they lie on each other.
/// @param diameter  of the sphere, above 0; insists
double area_coverage(Loading loading, Length diameter, Density material = settled_density);

/// Sum over the classes. Each class's sphere is that of its typical aerodynamic diameter turned into a volume diameter:
/// d = d_ae / sqrt(material/1000).
double area_coverage(const PerClass<Loading>& loading, Density material = settled_density);

/// Loading that covers an area once, side by side: 2 rho d/3.
Loading monolayer(Length diameter, Density material = settled_density);

/// Coverage at which people notice dust on a clean surface of the strongest contrast, a step they notice, and what they call
/// unfit for use (Hancock, Esmen & Furber 1976, abstract). People differ by a factor of two.
inline constexpr double just_seen = 0.002;
inline constexpr double just_noticed_step = 0.0045;
inline constexpr double called_dirty = 0.007;

/// How much more coverage than the strongest contrast it takes (judgment).
enum class Background : std::uint8_t { dark_floor, plastic_film, light_floor, carpet };
double contrast_factor(Background background);

/// Light along the surface shows four times less (judgment).
enum class Light : std::uint8_t { room, raking };
double light_factor(Light light);

/// Chance that a person who looks sees the dust: logistic in ln(coverage), one half at 0.2 % times contrast times light;
/// 10 to 90 % spans a factor of 4 (judgment on the threshold above).
/// @param coverage  0 or more; insists
/// @param light     factor on the coverage that it takes, above 0: 1 in ordinary light, more in dim light; insists
double seen_probability(double coverage, Background background, double light);
double seen_probability(double coverage, Background background, Light light);

}
