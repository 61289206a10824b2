#include "site/feet.hpp"

#include "dust/clothing.hpp"
#include "dust/resuspension.hpp"
#include "dust/soles.hpp"
#include "plan/walking.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr Length stride = 0.7_m;

/// What a step raises from a surface in its present state.
double raised_share(const Site& site, const Surface& surface, dust::SizeClass k)
{
    const dust::SurfaceKind kind = kind_of(surface);
    double share = dust::raised_per_step(k, kind);
    if (!dust::surface_traits(kind).is_carpet) share *= dust::fresh_dust_factor.typical;
    if (site.now < surface.wet_until) share *= dust::misted_factor.typical;
    return std::min(1.0, share);
}

}

void step_on(Site& site, Worker& who, std::size_t cell)
{
    const Spot spot = site.zones[who.zone].top[cell];
    Surface& surface = site.surfaces[spot.surface];
    const double under_foot = std::min(1.0, dust::sole_contact / surface.patch_area);
    Amount taken;
    Amount given;
    for (const dust::SizeClass k : dust::all_classes()) {
        Amount& lying = surface.patches[spot.patch].free[k];
        Amount& carried = who.soles.load.free[k];
        const Amount left = part(carried, dust::sole_loss(who.clean_steps));
        if (!lying.is_zero()) {
            raise_into_air(site, surface.free(spot.patch, k), who.zone, k, part(lying, raised_share(site, surface, k) * under_foot));
            const double room_on_sole = 1.0 - mass(dust::total(who.soles.load).dust) / (dust::sole_capacity * 2.0);
            const Amount up = part(lying, std::clamp(room_on_sole, 0.0, 1.0) * under_foot * dust::sole_pickup(k, dust::SoleKind::smooth));
            site.ledger.move(surface.free(spot.patch, k), who.soles.free(k), k, up);
            taken += up;
        }
        if (!left.is_zero()) {
            lay_on(site, who.soles.free(k), spot.surface, spot.patch, k, left);
            given += left;
        }
    }
    // Dust that has stayed on longest holds best; fresh dust starts the count again.
    if (taken.dust > given.dust) who.clean_steps = 0;
    else ++who.clean_steps;
    if (who.is_inside && site.has_begun && !site.verification.is_inspected) who.has_clean_soles = false;
    if (surface.is_cleaned[spot.patch] != 0 && given.dust > Picograms{}) surface.is_cleaned[spot.patch] = 0;
}

void walk_to(Site& site, Worker& who, plan::Point where)
{
    const Zone& zone = site.zones[who.zone];
    const std::vector<std::size_t> path = plan::walk(zone.raster, zone.is_blocked, who.at, where);
    if (path.empty()) return;
    for (const plan::Point at : plan::footsteps(zone.raster, path, stride)) step_on(site, who, zone.raster.cell_at(at));
    who.at = zone.raster.center(path.back());
}

void shuffle(Site& site, Worker& who, plan::Point around, Length radius, int steps)
{
    const Zone& zone = site.zones[who.zone];
    const std::vector<std::size_t> cells = zone.raster.cells_within({around.x, around.y, {}, {}}, radius);
    const Luck luck{site.seed, Stream::walking};
    for (int s = 0; s < steps && !cells.empty(); ++s) {
        const auto pick = static_cast<std::size_t>(luck.uniform(site.draws++, 0) * static_cast<double>(cells.size()));
        const std::size_t cell = cells[std::min(pick, cells.size() - 1)];
        if (zone.is_blocked[cell]) continue;
        step_on(site, who, cell);
        who.at = zone.raster.center(cell);
    }
}

void soil_clothes(Site& site, Worker& who, Time spell)
{
    // What lies within reach of somebody kneeling and leaning: one square meter of floor.
    constexpr Area reach = 1.0_m2;
    const Zone& zone = site.zones[who.zone];
    const Spot spot = zone.top[zone.raster.cell_at(who.at)];
    Surface& surface = site.surfaces[spot.surface];
    const double patches = reach / surface.patch_area;
    const double share = dust::clothing_gain(dust::Stirring::working, false, true, spell) * std::min(patches, 1.0);
    for (const dust::SizeClass k : dust::all_classes()) {
        if (k == dust::SizeClass::chips) continue;
        site.ledger.move(surface.free(spot.patch, k), who.clothes.free(k), k, part(surface.patches[spot.patch].free[k], share));
    }
    if (site.has_begun && !site.verification.is_inspected) who.has_clean_clothes = false;
}

}
