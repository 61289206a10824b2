#include "site/feet.hpp"

#include "dust/clothing.hpp"
#include "dust/resuspension.hpp"
#include "dust/soles.hpp"
#include "mechanics/floor_walk.hpp"
#include "plan/walking.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/standing_things.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace flapdoor::site {

namespace {

constexpr Length stride = 0.7_m;

/// What a step raises from a surface in its present state.
double raised_share(const Site& site, const Surface& surface, dust::SizeClass k)
{
    const dust::SurfaceKind kind = kind_of(surface);
    double share = dust::raised_per_step(k, kind) * site.uncertain.raised;
    if (!dust::surface_traits(kind).is_carpet) share *= dust::fresh_dust_factor.typical;
    if (site.now < surface.wet_until) share *= dust::misted_factor.typical;
    return std::min(1.0, share);
}

/// Dust that feet kick aside rather than raise.
constexpr std::array kicked_classes{dust::SizeClass::um_80, dust::SizeClass::um_160, dust::SizeClass::chips};

/// Loose dust of a cell that a foot can push along: none on carpet, none in the wet.
Picograms pushable(const Site& site, const Zone& zone, std::size_t cell)
{
    const Spot spot = zone.top[cell];
    const Surface& surface = site.surfaces[spot.surface];
    if (zone.is_blocked[cell] || site.now < surface.wet_until || dust::surface_traits(kind_of(surface)).is_carpet) return {};
    Picograms sum;
    for (const dust::SizeClass k : kicked_classes) sum += surface.patches[spot.patch].free[k].dust;
    return sum;
}

/// The cells beside a way where most lies to be kicked, in cell order. One chip stands for each.
std::vector<std::size_t> kicked_cells(const Site& site, const Zone& zone, const std::vector<std::size_t>& path)
{
    constexpr Length aside = 0.15_m;            // feet go this far to either side
    constexpr std::size_t most = 24;            // a passage is to cost a few milliseconds at most
    constexpr Picograms trifle = picograms(1e-6_g);
    std::set<std::size_t> beside;
    for (const std::size_t cell : path) {
        const plan::Point at = zone.raster.center(cell);
        for (const std::size_t near : zone.raster.cells_within({at.x, at.y, {}, {}}, aside)) beside.insert(near);
    }
    std::vector<std::pair<Picograms, std::size_t>> loaded;
    for (const std::size_t cell : beside)
        if (const Picograms there = pushable(site, zone, cell); there > trifle) loaded.emplace_back(there, cell);
    std::sort(loaded.begin(), loaded.end(), [](const auto& a, const auto& b) { return a.first != b.first ? a.first > b.first : a.second < b.second; });
    loaded.resize(std::min(loaded.size(), most));
    std::vector<std::size_t> cells;
    for (const auto& [amount, cell] : loaded) cells.push_back(cell);
    std::sort(cells.begin(), cells.end());
    return cells;
}

void kick(Site& site, const Zone& zone, std::size_t from, std::size_t to)
{
    if (from == to || zone.is_blocked[to]) return;
    const Spot here = zone.top[from];
    const Spot there = zone.top[to];
    for (const dust::SizeClass k : kicked_classes) {
        Surface& surface = site.surfaces[here.surface];
        const Amount moved = part(surface.patches[here.patch].free[k], dust::kicked_share);
        if (!moved.is_zero()) lay_on(site, surface.free(here.patch, k), there.surface, there.patch, k, moved);
    }
}

/// Along a way through the dusty room: what feet do there is left to the mechanics of chips and soles.
void walk_through_dust(Site& site, Worker& who, const std::vector<std::size_t>& path)
{
    const Zone& zone = site.zones[who.zone];
    const plan::Raster& raster = zone.raster;
    mechanics::FloorScene scene;
    scene.floor = raster.rect();
    scene.obstacles = standing_things(site, who.zone);
    const std::vector<std::size_t> cells = kicked_cells(site, zone, path);
    const Luck luck{site.seed, Stream::walking};
    const std::uint64_t number = site.draws++;
    for (const std::size_t cell : cells) {
        const Draw draw = luck.draw(number, static_cast<std::uint32_t>(cell));
        const plan::Point center = raster.center(cell);
        scene.chips.push_back({{center.x + raster.cell_width() * (unit(draw[0]) - 0.5), center.y + raster.cell_depth() * (unit(draw[1]) - 0.5)}});
    }
    std::vector<plan::Point> way;
    for (const std::size_t cell : path) way.push_back(raster.center(cell));
    step_on(site, who, path.front());
    for (const mechanics::FloorContact& contact : mechanics::walk_over(scene, way)) {
        const std::size_t to = raster.cell_at(contact.to);
        if (contact.kind == mechanics::FloorContactKind::chip_kicked) kick(site, zone, raster.cell_at(contact.from), to);
        if (contact.kind == mechanics::FloorContactKind::foot_down && !zone.is_blocked[to]) step_on(site, who, to);
    }
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
            const Amount up = part(lying, std::clamp(room_on_sole, 0.0, 1.0) * under_foot * dust::sole_pickup(k, dust::SoleKind::smooth, site.uncertain.sole_uptake));
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
    if (who.is_inside && site.has_begun) walk_through_dust(site, who, path);
    else
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
