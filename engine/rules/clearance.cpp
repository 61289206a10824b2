#include "rules/clearance.hpp"

#include "core/insist.hpp"

namespace flapdoor::rules {

Loading clearance_level(SampledSurface surface)
{
    switch (surface) {
    case SampledSurface::floor: return 5.0_ugpft2;
    case SampledSurface::sill: return 40.0_ugpft2;
    case SampledSurface::trough: return 100.0_ugpft2;
    }
    insist(false, "a sampled surface is one of three");
    return {};
}

bool is_cleared(SampledSurface surface, Loading sample) { return sample < clearance_level(surface); }

}
