#include "dust/deposition.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flapdoor::dust {

namespace {

constexpr double largest_exponent = 700.0;   // beyond it exp overflows and the speeds have long reached their limits

double cube(double x) { return x * x * x; }

double cube_root(double x) { return steady::pow(x, 1.0 / 3.0); }

}

double boundary_resistance(Length diameter, Speed friction_velocity, const Air& air)
{
    insist(friction_velocity.si > 0.0, "room air moves");
    constexpr double sqrt3 = std::numbers::sqrt3;
    const double schmidt = schmidt_number(diameter, air);
    const double r = 0.5 * (diameter * friction_velocity / air::kinematic_viscosity(air));   // r+, the radius in wall units

    // Integral of 1/(k y^3 + 1/Sc) from the particle's radius to the edge of the inner layer. The form usually
    // printed rounds k edge^3 to 0.0609; worked out in full, the difference of the two terms stays good for coarse dust as well.
    constexpr double k = 7.669e-4;
    constexpr double edge = 4.3;
    insist(r < edge, "a particle is smaller than the inner layer");
    const double c = 1.0 / cube_root(k * schmidt);
    const auto term = [&](double y) {
        return 0.5 * steady::log(cube(c + y) / (1.0 / schmidt + k * cube(y))) + sqrt3 * steady::atan((2.0 * y - c) / (sqrt3 * c));
    };
    return (term(edge) - term(r)) / (3.0 * k * c * c) + outer_layer_resistance;
}

DepositionSpeeds smooth_room_deposition(Length d_ae, Speed friction_velocity, const Air& air)
{
    const double resistance = boundary_resistance(d_ae, friction_velocity, air);
    const Speed settling = settling_speed(d_ae, air);
    const double exponent = std::min(settling / friction_velocity * resistance, largest_exponent);
    return {.floor = settling / -steady::expm1(-exponent),
            .wall = friction_velocity / resistance,
            .ceiling = settling / steady::expm1(exponent)};
}

DepositionSpeeds deposition_speeds(SizeClass size, const Air& air)
{
    const Speed settling = settling_speed(typical_diameter(size), air);
    return {.floor = settling, .wall = settling * wall_share, .ceiling = {}};
}

Rate room_loss_rate(const DepositionSpeeds& speeds, const RoomSurfaces& room)
{
    insist(room.volume.si > 0.0, "a room has a volume");
    return (speeds.floor * room.floor + speeds.wall * room.wall + speeds.ceiling * room.ceiling) / room.volume;
}

Rate furnished_loss_rate(Rate smooth, double furnishing)
{
    insist(furnishing >= 1.0 && furnishing <= 2.5, "furniture speeds up the loss by 1 to 2.5");
    constexpr Rate least{0.25 / 3600.0};
    return std::max(smooth, least) * furnishing;
}

}
