#pragma once

#include "dust/surface_kind.hpp"
#include "site/site.hpp"

namespace flapdoor::site {

/// However many cracks a surface has, some of what lies there is free.
inline constexpr double most_bound = 0.95;

/// How a surface holds dust and lets it go.
dust::SurfaceKind kind_of(const Surface& surface);

/// Does a patch lie in the joint of floor and wall, a crack of its own? Sheeting over it closes it.
inline bool is_at_joint(const Surface& surface, std::size_t patch) { return surface.role == SurfaceRole::floor && surface.is_edge[patch] != 0; }

/// Share of fresh dust that a surface hides in its cracks or pile, as this run takes it: in the open, or at the joint with a wall.
double bound_share(const Site& site, const Surface& surface, bool at_joint, dust::SizeClass k);

/// Puts dust on a patch: the share that the surface hides goes into its cracks, the rest lies free.
void lay_on(Site& site, dust::Holding from, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount amount,
            dust::Pathway pathway = dust::Pathway::none);

/// Fresh dust that landed on sheeting finds its way to the floor below: at the edges, more where they are not taped, where
/// it is torn, and everywhere through a cloth. Nothing for other surfaces.
void seep(Site& site, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount landed);

/// A footstep while working, with chips and tools under the sole: plastic on a floor may tear, and then lets through some of
/// what lies there and of all that lands there later.
void wear_sheeting(Site& site, std::size_t cell);

/// Puts dust on whatever lies open at a raster cell of a zone.
void land(Site& site, dust::Holding from, std::size_t zone, std::size_t cell, dust::SizeClass k, Amount amount,
          dust::Pathway pathway = dust::Pathway::none);

/// Puts dust on the wall nearest to a point of the work room, at a height.
void stick_to_wall(Site& site, dust::Holding from, plan::Point where, Length height, dust::SizeClass k, Amount amount);

/// Piece `index` of `count` equal pieces of an amount; all pieces together are the amount.
Amount equal_piece(Amount amount, std::size_t index, std::size_t count);

}
