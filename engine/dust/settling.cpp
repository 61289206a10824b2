#include "dust/settling.hpp"

#include "core/insist.hpp"
#include "dust/drag.hpp"
#include "dust/slip.hpp"

#include <cmath>
#include <numbers>

namespace flapdoor::dust {

namespace {

constexpr double boltzmann = 1.380649e-23;   // J/K, exact since 2019

double slip_at(Length diameter, const Air& air) { return slip_correction(diameter, air::mean_free_path(air)); }

}

Speed stokes_speed(Length d_ae, const Air& air) { return relaxation_time(d_ae, air) * air::gravity; }

Speed settling_speed(Length d_ae, const Air& air)
{
    insist(d_ae >= 0.01_um && d_ae <= 2000.0_um, "settling covers 0.01 to 2000 um");
    const double reynolds_per_speed = (d_ae / air::kinematic_viscosity(air)).si;
    const Speed stokes = stokes_speed(d_ae, air);

    // At v the drag is Cd Re/24 times Stokes'. It grows with v, so the balance v Cd Re/24 = v_Stokes has one root below v_Stokes.
    double low = 0.0;
    double high = stokes.si;
    for (int i = 0; i < 100; ++i) {
        const double v = 0.5 * (low + high);
        const double reynolds = v * reynolds_per_speed;
        const bool too_fast = reynolds > 1500.0 || v * drag_coefficient(reynolds) * reynolds / 24.0 > stokes.si;
        (too_fast ? high : low) = v;
    }
    return {0.5 * (low + high)};
}

PerClass<Speed> settling_speeds(const Air& air)
{
    PerClass<Speed> speeds;
    for (const SizeClass size : all_classes()) speeds[size] = settling_speed(typical_diameter(size), air);
    return speeds;
}

Time relaxation_time(Length d_ae, const Air& air)
{
    return unit_density * d_ae * d_ae / air::viscosity(air) * (slip_at(d_ae, air) / 18.0);
}

Diffusivity brownian_diffusivity(Length diameter, const Air& air)
{
    const double drag = 3.0 * std::numbers::pi * air::viscosity(air).si * diameter.si;
    return {boltzmann * air.temperature.kelvin * slip_at(diameter, air) / drag};
}

double schmidt_number(Length diameter, const Air& air) { return air::kinematic_viscosity(air) / brownian_diffusivity(diameter, air); }

Length aerodynamic_diameter(Length volume_diameter, Density body, double shape_factor, const Air& air)
{
    insist(body.si > 0.0 && shape_factor >= 1.0, "a body has a density, and no shape falls faster than a sphere");
    const double pull = body / unit_density * slip_at(volume_diameter, air) / shape_factor;
    Length found = volume_diameter * std::sqrt(pull);
    for (int i = 0; i < 60; ++i) found = volume_diameter * std::sqrt(pull / slip_at(found, air));
    return found;
}

}
