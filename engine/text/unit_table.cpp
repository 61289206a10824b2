#include "text/unit_table.hpp"

#include "text/unit_sizes.hpp"

#include <array>

namespace flapdoor::text {
namespace {

constexpr auto table = std::to_array<Unit>({
    {"ft", Kind::length, foot, 1.0, true, 1},
    {"in", Kind::length, inch, 1.0, true, 2},
    {"m", Kind::length, 1.0, 1.0, true},
    {"cm", Kind::length, 0.01, 1.0, true},
    {"mm", Kind::length, 1e-3, 1.0, true},
    {"um", Kind::length, 1e-6, 1.0, true},
    {"'", Kind::length, foot, 1.0, false, 1},
    {"\"", Kind::length, inch, 1.0, false, 2},
    {"foot", Kind::length, foot, 1.0, false, 1},
    {"feet", Kind::length, foot, 1.0, false, 1},
    {"inch", Kind::length, inch, 1.0, false, 2},
    {"inches", Kind::length, inch, 1.0, false, 2},
    {"yd", Kind::length, 3.0 * foot},

    {"ft2", Kind::area, square_foot, 1.0, true},
    {"in2", Kind::area, inch * inch, 1.0, true},
    {"m2", Kind::area, 1.0, 1.0, true},
    {"cm2", Kind::area, 1e-4, 1.0, true},
    {"sq ft", Kind::area, square_foot},
    {"square feet", Kind::area, square_foot},
    {"sq in", Kind::area, inch * inch},
    {"mm2", Kind::area, 1e-6},

    {"ft3", Kind::volume, cubic_foot, 1.0, true},
    {"m3", Kind::volume, 1.0, 1.0, true},
    {"L", Kind::volume, 1e-3, 1.0, true},
    {"mL", Kind::volume, 1e-6, 1.0, true},
    {"gal", Kind::volume, gallon, 1.0, true},
    {"qt", Kind::volume, gallon, 4.0},
    {"cu ft", Kind::volume, cubic_foot},
    {"l", Kind::volume, 1e-3},
    {"ml", Kind::volume, 1e-6},

    {"h", Kind::time, 3600.0, 1.0, true, 2},
    {"min", Kind::time, 60.0, 1.0, true, 3},
    {"s", Kind::time, 1.0, 1.0, true, 4},
    {"d", Kind::time, 86400.0, 1.0, false, 1},
    {"day", Kind::time, 86400.0, 1.0, false, 1},
    {"days", Kind::time, 86400.0, 1.0, false, 1},
    {"hour", Kind::time, 3600.0, 1.0, false, 2},
    {"hours", Kind::time, 3600.0, 1.0, false, 2},
    {"minute", Kind::time, 60.0, 1.0, false, 3},
    {"minutes", Kind::time, 60.0, 1.0, false, 3},
    {"second", Kind::time, 1.0, 1.0, false, 4},
    {"seconds", Kind::time, 1.0, 1.0, false, 4},
    {"ms", Kind::time, 1e-3},

    {"/h", Kind::rate, 1.0, 3600.0, true},
    {"/min", Kind::rate, 1.0, 60.0, true},
    {"/s", Kind::rate, 1.0, 1.0, true},
    {"1/h", Kind::rate, 1.0, 3600.0},
    {"1/min", Kind::rate, 1.0, 60.0},
    {"1/s", Kind::rate},
    {"ach", Kind::rate, 1.0, 3600.0},

    {"ft/min", Kind::speed, foot, 60.0, true},
    {"m/s", Kind::speed, 1.0, 1.0, true},
    {"cm/s", Kind::speed, 0.01, 1.0, true},
    {"ft/s", Kind::speed, foot, 1.0, true},
    {"mm/s", Kind::speed, 1e-3, 1.0, true},
    {"um/s", Kind::speed, 1e-6},
    {"mph", Kind::speed, 1609.344, 3600.0},
    {"km/h", Kind::speed, 1000.0, 3600.0},

    {"m2/s", Kind::diffusivity, 1.0, 1.0, true},
    {"cm2/s", Kind::diffusivity, 1e-4, 1.0, true},
    {"ft2/s", Kind::diffusivity, square_foot},

    {"cfm", Kind::air_flow, cubic_foot, 60.0, true},
    {"m3/h", Kind::air_flow, 1.0, 3600.0, true},
    {"m3/s", Kind::air_flow, 1.0, 1.0, true},
    {"L/s", Kind::air_flow, 1e-3, 1.0, true},
    {"ft3/min", Kind::air_flow, cubic_foot, 60.0},
    {"CFM", Kind::air_flow, cubic_foot, 60.0},

    {"Pa", Kind::pressure, 1.0, 1.0, true},
    {"in wc", Kind::pressure, inch_of_water, 1.0, true},
    {"kPa", Kind::pressure, 1000.0, 1.0, true},
    {"hPa", Kind::pressure, 100.0},
    {"psi", Kind::pressure, 6894.757293168361},

    {"Pa s", Kind::viscosity, 1.0, 1.0, true},
    {"uPa s", Kind::viscosity, 1e-6, 1.0, true},

    {"lb", Kind::mass, pound, 1.0, true, 1},
    {"oz", Kind::mass, pound, 16.0, true, 2},
    {"kg", Kind::mass, 1.0, 1.0, true},
    {"g", Kind::mass, 1e-3, 1.0, true},
    {"mg", Kind::mass, 1e-6, 1.0, true},
    {"ug", Kind::mass, 1e-9},

    {"kg/m3", Kind::density, 1.0, 1.0, true},
    {"g/cm3", Kind::density, 1000.0},
    {"g/m3", Kind::density, 1e-3, 1.0, true},
    {"mg/m3", Kind::density, 1e-6, 1.0, true},
    {"ug/m3", Kind::density, 1e-9, 1.0, true},
    {"lb/ft3", Kind::density, pound, cubic_foot},

    {"ug/ft2", Kind::loading, 1e-9, square_foot, true},
    {"mg/cm2", Kind::loading, 1e-2, 1.0, true},
    {"g/m2", Kind::loading, 1e-3},
    {"mg/m2", Kind::loading, 1e-6},
    {"ug/m2", Kind::loading, 1e-9},
    {"kg/m2", Kind::loading, 1.0, 1.0, true},
    {"ug/cm2", Kind::loading, 1e-5},
    {"mg/ft2", Kind::loading, 1e-6, square_foot},
    {"g/ft2", Kind::loading, 1e-3, square_foot},

    {"F", Kind::temperature, 1.0, 1.0, true},
    {"C", Kind::temperature, 1.0, 1.0, true},
    {"K", Kind::temperature, 1.0, 1.0, true},

    {"kg", Kind::dust_mass, 1e15},
    {"g", Kind::dust_mass, 1e12, 1.0, true},
    {"mg", Kind::dust_mass, 1e9, 1.0, true},
    {"ug", Kind::dust_mass, 1e6, 1.0, true},
    {"ng", Kind::dust_mass, 1e3, 1.0, true},
    {"pg", Kind::dust_mass, 1.0, 1.0, true},
});

}

std::span<const Unit> units() { return table; }

double largest(Kind kind)
{
    switch (kind) {
        case Kind::length: return 1000.0;
        case Kind::area: return 1e5;
        case Kind::volume: return 1e5;
        case Kind::time: return 3.2e8;          // ten years
        case Kind::rate: return 1e6;
        case Kind::speed: return 1000.0;
        case Kind::diffusivity: return 1000.0;
        case Kind::air_flow: return 1e4;
        case Kind::pressure: return 1e7;
        case Kind::viscosity: return 1000.0;
        case Kind::mass: return 1e5;
        case Kind::density: return 3e4;
        case Kind::loading: return 1000.0;
        case Kind::temperature: return 5000.0;
        case Kind::dust_mass: return 1e18;      // pg
    }
    return 0.0;
}

std::vector<std::string_view> spellings(Kind kind)
{
    std::vector<std::string_view> found;
    for (const Unit& unit : table)
        if (unit.kind == kind) found.push_back(unit.spelling);
    return found;
}

}
