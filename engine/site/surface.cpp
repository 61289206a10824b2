#include "site/surface.hpp"

namespace flapdoor::site {

Amount total(const Surface& surface)
{
    Amount sum;
    for (const dust::Load& load : surface.patches) sum += dust::total(load);
    return sum;
}

namespace {

Loading loading(Picograms lead, Area area) { return area > Area{} ? mass(lead) / area : Loading{}; }

}

Loading lead_loading(const Surface& surface)
{
    Picograms lead;
    for (const dust::Load& load : surface.patches) lead += dust::dust_only(load).lead;
    return loading(lead, surface.area());
}

Loading lead_loading(const Surface& surface, const std::vector<std::size_t>& patches)
{
    Picograms lead;
    for (const std::size_t p : patches) lead += dust::dust_only(surface.patches[p]).lead;
    return loading(lead, surface.patch_area * static_cast<double>(patches.size()));
}

}
