#include "dust/resuspension.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::MistSheeting& step, const Team& by)
{
    if (site.sheet != SheetState::laid && site.sheet != SheetState::folded) return "there is no sheeting to mist";
    return first_of({must_be_inside(site, by), must_have(site, step.mister, {job::SupplyKindOf::mister}, "to mist")});
}

Done carry_out(Site& site, const job::MistSheeting&, const Team& by)
{
    gather(site, by, site.room().raster.rect().center());
    spend(site, job::MistSheeting::takes);
    for (Surface& surface : site.surfaces)
        if (surface.role == SurfaceRole::sheeting || surface.role == SurfaceRole::object_cover) surface.wet_until = site.now + Time{60.0 * dust::misted_minutes.typical};
    return {};
}

}
