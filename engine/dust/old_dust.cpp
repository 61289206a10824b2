#include "dust/old_dust.hpp"

namespace flapdoor::dust {

Band old_bound_share(SurfaceKind surface)
{
    constexpr std::array<Band, surface_kind_count> shares = {{
        {0.10, 0.05, 0.20},
        {0.35, 0.20, 0.50},
        {0.30, 0.15, 0.50},
        {0.50, 0.40, 0.60},
        {0.75, 0.60, 0.90},
        {0.75, 0.60, 0.90},
    }};
    return shares[static_cast<std::size_t>(surface)];
}

}
