#include "dust/surface_kind.hpp"

namespace flapdoor::dust {

namespace {

// Rates: Yiin et al. 2004 (smooth), Ewers et al. 1994 (linoleum, wood, carpets), Sussell et al. 1999 (deteriorated); abstracts.
constexpr std::array<SurfaceTraits, surface_kind_count> kinds = {{
    {.bound_share = {0.03, 0.02, 0.05}, .vacuum = per_minute_per_m2(2.0), .wet_free = 0.95, .wet_bound = 0.7, .is_carpet = false},
    {.bound_share = {0.22, 0.11, 0.33}, .vacuum = per_minute_per_m2(1.5), .wet_free = 0.95, .wet_bound = 0.9, .is_carpet = false},
    {.bound_share = {0.035, 0.0175, 0.0525}, .vacuum = per_minute_per_m2(1.1), .wet_free = 0.9, .wet_bound = 0.5, .is_carpet = false},
    {.bound_share = {0.5, 0.4, 0.6}, .vacuum = per_minute_per_m2(0.7), .wet_free = 0.8, .wet_bound = 0.2, .is_carpet = false},
    {.bound_share = {0.05, 0.025, 0.075}, .vacuum = per_minute_per_m2(0.2), .wet_free = 0.0, .wet_bound = 0.0, .is_carpet = true},
    {.bound_share = {0.75, 0.6, 0.9}, .vacuum = per_minute_per_m2(0.1), .wet_free = 0.0, .wet_bound = 0.0, .is_carpet = true},
}};

}

const SurfaceTraits& surface_traits(SurfaceKind kind) { return kinds[static_cast<std::size_t>(kind)]; }

}
