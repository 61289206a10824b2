#include "air/air_properties.hpp"
#include "row.hpp"

using namespace flapdoor;
using air::Air;
using published::check;
using published::Row;

namespace {

constexpr auto tartu = "University of Tartu note on the ISO 15900 forms";
constexpr auto sutherland = "recomputed from Sutherland's law with the constants of the University of Tartu note";

Air at(double kelvin, double pascals = 101325.0) { return {.temperature = {kelvin}, .pressure = {pascals}}; }

}

TEST_CASE("air is as viscous and as dense as the standards say")
{
    check({
        Row{"P-001 viscosity at 296.15 K", viscosity(at(296.15)).si, 1.83245e-5, 1e-4, tartu},
        Row{"P-002 viscosity at 293.15 K", viscosity(at(293.15)).si, 1.8181e-5, 3e-3, sutherland},
        Row{"P-002 viscosity at 293.15 K, US Standard Atmosphere form", viscosity(at(293.15)).si, 1.8134e-5, 3e-3,
            "recomputed from the 1976 US Standard Atmosphere formula"},
        Row{"P-003 viscosity at 273.15 K", viscosity(at(273.15)).si, 1.7205e-5, 3e-3, sutherland},
        Row{"P-003 viscosity at 303.15 K", viscosity(at(303.15)).si, 1.8657e-5, 3e-3, sutherland},
        Row{"P-004 mean free path at 296.15 K, 101.3 kPa, nm", mean_free_path(at(296.15, 101300.0)).si * 1e9, 67.3, 1e-3, tartu},
        Row{"P-005 mean free path at 293.15 K, nm", mean_free_path(at(293.15)).si * 1e9, 66.43, 5e-3,
            "recomputed; 66 nm in University of Florida course pages"},
        Row{"P-007 density at 273.15 K", density(at(273.15)).si, 1.2923, 1e-3, "recomputed from the ideal gas law"},
        Row{"P-007 density at 293.15 K", density(at(293.15)).si, 1.2041, 1e-3, "recomputed from the ideal gas law"},
        Row{"P-008 kinematic viscosity at 293.15 K", kinematic_viscosity(at(293.15)).si, 1.510e-5, 5e-3, sutherland},
    });
}
