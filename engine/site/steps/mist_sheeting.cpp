#include "core/steady.hpp"
#include "dust/mopping.hpp"
#include "dust/resuspension.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::MistSheeting& step, const Team& by)
{
    if (site.sheet != SheetState::laid && site.sheet != SheetState::folded) return to_say("there is no sheeting to mist");
    return first_of({must_be_inside(site, by), must_have(site, step.mister, {job::SupplyKindOf::mister}, to_say("to mist"))});
}

namespace {

/// Droplets bring the mixed dust of the room down. Clouds too young to be mixed are left to themselves.
void clear_air(Site& site, Time spell)
{
    Zone& room = site.room();
    const double brought_down = -steady::expm1(-(dust::misting_rate(dust::misting_clears, room.volume) * spell));
    for (const dust::SizeClass k : dust::all_classes())
        site.ledger.move({room.air[k], room.air_account}, {room.falling[k], room.air_account}, k, part(room.air[k], brought_down));
}

}

Done carry_out(Site& site, const job::MistSheeting& step, const Team& by)
{
    gather(site, by, site.room().raster.rect().center());
    if (step.mists_air) pass_time(site, job::MistSheeting::takes, {true, clear_air});
    else spend(site, job::MistSheeting::takes);
    for (Surface& surface : site.surfaces)
        if (surface.role == SurfaceRole::sheeting || surface.role == SurfaceRole::object_cover) surface.wet_until = site.now + Time{60.0 * dust::misted_minutes.typical};
    return {};
}

}
