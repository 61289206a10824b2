#pragma once

#include "dust/surface_kind.hpp"
#include "site/site.hpp"

namespace flapdoor::site {

/// How a surface holds dust and lets it go.
dust::SurfaceKind kind_of(const Surface& surface);

/// Puts dust on a patch: the share that the surface hides goes into its cracks, the rest lies free.
void lay_on(Site& site, dust::Holding from, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount amount,
            dust::Pathway pathway = dust::Pathway::none);

/// Fresh dust that landed on sheeting finds its way to the floor below: at the edges, more where they are not taped, and
/// everywhere through a cloth. Nothing for other surfaces.
void seep(Site& site, std::size_t surface, std::size_t patch, dust::SizeClass k, Amount landed);

/// Puts dust on whatever lies open at a raster cell of a zone.
void land(Site& site, dust::Holding from, std::size_t zone, std::size_t cell, dust::SizeClass k, Amount amount,
          dust::Pathway pathway = dust::Pathway::none);

/// Puts dust on the wall nearest to a point of the work room, at a height.
void stick_to_wall(Site& site, dust::Holding from, plan::Point where, Length height, dust::SizeClass k, Amount amount);

/// Spreads fallout evenly over all level surfaces of a zone.
void spread_over_floor(Site& site, dust::Holding from, std::size_t zone, dust::SizeClass k, Amount amount, dust::Pathway pathway = dust::Pathway::none);

/// Spreads it evenly over all walls of the work room.
void spread_over_walls(Site& site, dust::Holding from, dust::SizeClass k, Amount amount);

/// Piece `index` of `count` equal pieces of an amount; all pieces together are the amount.
Amount equal_piece(Amount amount, std::size_t index, std::size_t count);

}
