#include "site/cleaning.hpp"

#include "core/steady.hpp"
#include "dust/mopping.hpp"
#include "dust/resuspension.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"
#include "plan/walking.hpp"
#include "site/feet.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::site {

namespace {

constexpr int directions = 2;          // a second pass across the first reaches the rows it missed
constexpr double missed_by_mop = 0.03; // share of the floor a mop's path misses, edges three times that (judgment)

bool is_exhausted(dust::SizeClass k) { return k <= dust::SizeClass::um_5; }   // classes up to 10 um pass a poor filter

plan::Point door_of(const Site& site)
{
    const OpeningState& door = entrance(site);
    return middle(site.zones[door.zone].plan, door.plan);
}

}

Part whole(const Site& site, std::size_t surface)
{
    Part part{surface, {}};
    part.patches.resize(site.surfaces[surface].patches.size());
    std::iota(part.patches.begin(), part.patches.end(), std::size_t{0});
    return part;
}

Part bare_part(const Site& site, std::size_t surface)
{
    Part part{surface, {}};
    const Surface& s = site.surfaces[surface];
    const Zone& zone = site.zones[s.zone];
    for (std::size_t p = 0; p < s.cells.size(); ++p) {
        const Spot top = zone.top[s.cells[p]];
        if (top.surface == surface && top.patch == p) part.patches.push_back(p);
    }
    return part;
}

std::vector<std::size_t> ledges(const Site& site)
{
    std::vector<std::size_t> found;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const Surface& surface = site.surfaces[s];
        const bool is_ledge = surface.role == SurfaceRole::sill || surface.role == SurfaceRole::counter || surface.role == SurfaceRole::object_top;
        if (is_ledge && surface.is_there && surface.zone == site.work_room) found.push_back(s);
    }
    std::stable_sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) { return site.surfaces[a].height > site.surfaces[b].height; });
    return found;
}

Part floor_part(const Site& site, job::CleaningPath path)
{
    const Zone& room = site.room();
    const std::size_t floor = floor_of(site, site.work_room);
    std::vector<std::size_t> cells = plan::strips_toward(room.raster, room.is_blocked, door_of(site));
    if (path == job::CleaningPath::from_door) std::reverse(cells.begin(), cells.end());
    Part part{floor, {}};
    // What lies under sheeting or things stays out of reach.
    for (const std::size_t cell : cells)
        if (room.top[cell].surface == floor) part.patches.push_back(cell);
    return part;
}

std::vector<Part> parts_of(const Site& site, job::Target target, job::CleaningPath path)
{
    std::vector<Part> parts;
    for (const std::size_t s : ledges(site)) {
        const SurfaceRole role = site.surfaces[s].role;
        const bool is_meant = target == job::Target::everything || (target == job::Target::sills && role == SurfaceRole::sill)
                              || (target == job::Target::counters && role == SurfaceRole::counter)
                              || (target == job::Target::objects && role == SurfaceRole::object_top);
        if (Part part = bare_part(site, s); is_meant && !part.patches.empty()) parts.push_back(std::move(part));
    }
    if (target == job::Target::everything || target == job::Target::floor) parts.push_back(floor_part(site, path));
    return parts;
}

Area vacuum(Site& site, const Part& cleaned, double minutes_per_square_meter, bool is_hepa, bool has_beater)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_of(surface);
    const dust::Nozzle nozzle{{0.3}, {0.3}, has_beater};
    const dust::Exposure exposure = dust::minutes_per_m2(minutes_per_square_meter);
    const double through = dust::exhaust_penetration(is_hepa ? dust::VacuumKind::hepa_sealed : dust::VacuumKind::ordinary).typical;
    const double loosened = dust::worked_loose(kind, nozzle, exposure);
    for (const std::size_t p : cleaned.patches) {
        const bool is_edge = surface.is_edge[p] != 0;
        const double coverage = dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, directions);
        for (const dust::SizeClass k : dust::all_classes()) {
            if (loosened > 0.0) site.ledger.move(surface.bound(p, k), surface.free(p, k), k, part(surface.patches[p].bound[k], loosened));
            const double taken = coverage * (1.0 - dust::vacuum_residual(dust::vacuum_rate(kind, k, nozzle, is_edge), exposure));
            const Amount sucked = part(surface.patches[p].free[k], taken);
            const Amount blown = is_exhausted(k) ? part(sucked, through) : Amount{};
            const dust::Pathway pathway = site.ledger.account(surface.account).side == dust::Side::outside ? dust::Pathway::recovered : dust::Pathway::none;
            raise_into_air(site, surface.free(p, k), surface.zone, k, blown);
            site.ledger.move(surface.free(p, k), site.vacuum.free(k), k, sucked - blown, pathway);
        }
    }
    return surface.patch_area * static_cast<double>(cleaned.patches.size());
}

Area wipe(Site& site, const Part& cleaned, bool changes_cloth)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_of(surface);
    const double fresh = dust::fresh_wipe(dust::Cloth::wet).typical;
    const dust::Pathway pathway = site.ledger.account(surface.account).side == dust::Side::outside ? dust::Pathway::recovered : dust::Pathway::none;
    Mass on_face{};
    for (const std::size_t p : cleaned.patches) {
        if (changes_cloth && on_face > dust::face_capacity(dust::Cloth::wet) * 0.1) on_face = {};
        for (const dust::SizeClass k : dust::all_classes()) {
            const Amount free = part(surface.patches[p].free[k], dust::wipe_share(dust::Cloth::wet, k, fresh, on_face));
            const Amount bound = part(surface.patches[p].bound[k], dust::wipe_bound_share(dust::Cloth::wet, kind));
            site.ledger.move(surface.free(p, k), site.cloths.free(k), k, free, pathway);
            site.ledger.move(surface.bound(p, k), site.cloths.free(k), k, bound, pathway);
            on_face += mass((free + bound).dust);
        }
    }
    surface.wet_until = site.now + site.scenario.drying;
    return surface.patch_area * static_cast<double>(cleaned.patches.size());
}

Area mop(Site& site, const Part& cleaned, Rinsing rinsing, int water_changes)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_of(surface);
    const dust::SurfaceTraits& traits = dust::surface_traits(kind);
    const Area area = surface.patch_area * static_cast<double>(cleaned.patches.size());
    dust::Mopping job;
    job.removed = traits.wet_free;
    job.into_water = rinsing == Rinsing::separate_water ? dust::two_buckets : dust::one_bucket;
    job.floor = area / static_cast<double>(1 + water_changes);
    const dust::Mopped shares = dust::mop(job);
    const dust::Pathway pathway = site.ledger.account(surface.account).side == dust::Side::outside ? dust::Pathway::recovered : dust::Pathway::none;
    for (const std::size_t p : cleaned.patches) {
        const double missed = missed_by_mop * (surface.is_edge[p] != 0 ? 3.0 : 1.0);
        for (const dust::SizeClass k : dust::all_classes()) {
            // Wetting loosens part of what is bound; the mop then takes the same share of it.
            site.ledger.move(surface.bound(p, k), surface.free(p, k), k, part(surface.patches[p].bound[k], traits.wet_bound * (1.0 - missed)));
            const Amount taken = part(surface.patches[p].free[k], (1.0 - missed) * (1.0 - shares.floor));
            site.ledger.move(surface.free(p, k), site.mop_water.free(k), k, taken, pathway);
        }
    }
    surface.wet_until = site.now + site.scenario.drying;
    return area;
}

void mark_cleaned(Site& site, const Part& part)
{
    for (const std::size_t p : part.patches) site.surfaces[part.surface].is_cleaned[p] = 1;
}

void walk_along(Site& site, Worker& who, const Part& part)
{
    const Surface& surface = site.surfaces[part.surface];
    if (surface.zone != who.zone || part.patches.empty()) return;
    const Zone& zone = site.zones[who.zone];
    int on_cleaned = 0;
    constexpr std::size_t cells_per_step = 14;   // a footfall for each 0.7 m of a 0.2 m wide stroke
    for (std::size_t i = 0; i < part.patches.size(); i += cells_per_step) {
        const std::size_t cell = surface.cells[part.patches[i]];
        if (zone.is_blocked[cell]) continue;
        const Spot top = zone.top[cell];
        if (site.surfaces[top.surface].is_cleaned[top.patch] != 0) ++on_cleaned;
        step_on(site, who, cell);
        who.at = zone.raster.center(cell);
    }
    measure(site, "stepped-on-cleaned", who.id.name, job::MeasureKind::number, on_cleaned);
}

void go_over(Site& site, const std::vector<job::PersonId>& by, const Part& part, job::CleaningPath path, const std::function<Area()>& clean, Time per_square_meter)
{
    if (part.patches.empty()) return;
    const bool is_level_floor = site.surfaces[part.surface].height == Length{};
    const plan::Point start = site.zones[site.surfaces[part.surface].zone].raster.center(site.surfaces[part.surface].cells[part.patches.front()]);
    const auto walk = [&] {
        for (const job::PersonId& id : by) {
            Worker& who = worker(site, id);
            if (who.zone != site.surfaces[part.surface].zone) continue;
            if (is_level_floor) walk_along(site, who, part);
            else walk_to(site, who, start);
        }
    };
    const bool is_toward_door = path == job::CleaningPath::toward_door;
    if (is_toward_door) walk();
    const Area area = clean();
    mark_cleaned(site, part);
    if (!is_toward_door) walk();
    pass_time(site, per_square_meter * area.si);
}

bool is_hepa(const Site& site, const job::SupplyId& vacuum)
{
    const job::Supply* supply = find_supply(site, vacuum);
    return supply != nullptr && supply->kind == job::SupplyKindOf::hepa_vacuum;
}

}
