#pragma once

#include "core/quantity.hpp"

#include <cmath>

namespace flapdoor::mechanics {

/// The nearest multiple of a grid. What the rigid-body solver computes in single precision is put on a grid before the
/// model sees it, so that its last bits decide nothing.
inline double on_grid(double value, double grid) { return std::floor(value / grid + 0.5) * grid; }

template <int M, int S, int N>
Quantity<M, S, N> on_grid(Quantity<M, S, N> value, Quantity<M, S, N> grid) { return {on_grid(value.si, grid.si)}; }

}
