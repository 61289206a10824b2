#include "air/air_properties.hpp"

#include "core/insist.hpp"

#include <cmath>

namespace flapdoor::air {

namespace {

constexpr double reference_kelvin = 296.15;
constexpr double sutherland_kelvin = 110.4;
constexpr double specific_gas_constant = 287.05;   // J/(kg K)
constexpr Viscosity reference_viscosity{1.83245e-5};
constexpr Length reference_free_path{67.3e-9};
constexpr Pressure reference_pressure{101300.0};

void check(const Air& air)
{
    insist(air.temperature.kelvin >= 250.0 && air.temperature.kelvin <= 320.0, "room air is between 250 and 320 K");
    insist(air.pressure.si >= 70e3 && air.pressure.si <= 105e3, "room air is between 70 and 105 kPa");
}

}

Density density(const Air& air)
{
    check(air);
    return {air.pressure.si / (specific_gas_constant * air.temperature.kelvin)};
}

Viscosity viscosity(const Air& air)
{
    check(air);
    const double ratio = air.temperature.kelvin / reference_kelvin;
    return reference_viscosity *
           (ratio * std::sqrt(ratio) * (reference_kelvin + sutherland_kelvin) / (air.temperature.kelvin + sutherland_kelvin));
}

Length mean_free_path(const Air& air)
{
    check(air);
    const double ratio = air.temperature.kelvin / reference_kelvin;
    return reference_free_path * (ratio * ratio * (reference_pressure / air.pressure) * (reference_kelvin + sutherland_kelvin) /
                                  (air.temperature.kelvin + sutherland_kelvin));
}

Diffusivity kinematic_viscosity(const Air& air) { return viscosity(air) / density(air); }

}
