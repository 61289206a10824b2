#pragma once

#include "dust/band.hpp"
#include "dust/lognormal.hpp"
#include "dust/surface_kind.hpp"

namespace flapdoor::dust {

/// Sizes of the dust that lies in a house before the job (judgment): about a tenth of it below 10 um.
inline constexpr Lognormal old_dust{{40e-6}, 3.0};

/// Share of the old dust that is trodden and washed into a surface, out of reach of dry suction. More than of fresh dust,
/// which has lain there for hours: judgment; carpet as for old carpet. On deteriorated floors it is what was measured, on old
/// dust (Sussell et al. 1999, record), so fresh dust counts as just as deep there.
Band old_bound_share(SurfaceKind surface);

}
