#pragma once

#include "dust/size_class.hpp"
#include "dust/surface_kind.hpp"

namespace flapdoor::dust {

enum class Cloth : std::uint8_t { wet, electrostatic_dry };

/// Share of the free dust that a fresh face takes (judgment): wet 0.9 (0.8-0.97), dry electrostatic 0.8 (0.6-0.95).
Band fresh_wipe(Cloth cloth);

/// Most dust on one face (judgment): wet 2 g, dry 1 g.
Mass face_capacity(Cloth cloth);

/// Share of a class's free dust that one wipe takes with a face that carries some already: eta (1 - q/q_max).
/// Dry cloths take nothing below 2.5 um.
/// @param fresh    eta of a clean face, 0 to 1
/// @param carried  0 or more; insists
double wipe_share(Cloth cloth, SizeClass size, double fresh, Mass carried);

/// Share of the bound dust that a wet wipe takes; a dry cloth takes none.
double wipe_bound_share(Cloth cloth, SurfaceKind surface);

/// What is left after several things were done in a row, each removing a share of what it found.
template <class Shares>
constexpr double residual_after(const Shares& removed)
{
    double left = 1.0;
    for (const double share : removed) left *= 1.0 - share;
    return left;
}

}
