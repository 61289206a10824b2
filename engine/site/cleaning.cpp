#include "site/cleaning.hpp"

#include "core/insist.hpp"
#include "dust/mopping.hpp"
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

constexpr int mopping_passes = 2;   // strokes of a mop overlap: each place is met twice, as with crossing passes (judgment)
constexpr Volume bucket = 8.0_L;
constexpr double most_blown = 0.5;  // however bad a vacuum is, it keeps something

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

std::vector<Part> carpet_parts(const Site& site)
{
    std::vector<Part> parts;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const Surface& surface = site.surfaces[s];
        if (surface.role != SurfaceRole::floor || surface.zone != site.work_room || surface.finish != job::FloorKind::carpet) continue;
        Part part = s == floor_of(site, site.work_room) ? floor_part(site, job::CleaningPath::toward_door) : bare_part(site, s);
        if (!part.patches.empty()) parts.push_back(std::move(part));
    }
    return parts;
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

namespace {

/// A carpet with more in its pile than on it is an old one, whatever fell on it lately.
dust::SurfaceKind kind_under_nozzle(const Surface& surface, const std::vector<std::size_t>& patches)
{
    const dust::SurfaceKind kind = kind_of(surface);
    if (kind != dust::SurfaceKind::carpet_fresh) return kind;
    Picograms free, bound;
    for (const std::size_t p : patches) {
        for (const dust::SizeClass k : dust::all_classes()) {
            free += surface.patches[p].free[k].dust;
            bound += surface.patches[p].bound[k].dust;
        }
    }
    return bound > free ? dust::SurfaceKind::carpet_old : kind;
}

/// Exposure and coverage of the middle of a surface or of its edges.
struct Going {
    dust::Exposure exposure{};
    double coverage = 0.0;
};

Going going_over(const Vacuuming& how, bool is_edge)
{
    const int passes = how.crosses ? 2 : 1;
    const int times = is_edge && how.does_edges ? 2 : 1;
    return {dust::minutes_per_m2(how.minutes_per_square_meter * times), dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, passes * times)};
}

/// The usual nozzle, pushed faster when one stroke has to do in less time than it takes.
dust::Nozzle nozzle_of(const Vacuuming& how)
{
    dust::Nozzle nozzle{{0.3}, {0.3}, how.has_beater};
    nozzle.speed = std::max(nozzle.speed, 1.0 / (nozzle.width * dust::minutes_per_m2(how.minutes_per_square_meter)));
    return nozzle;
}

dust::Pathway pathway_from(const Site& site, const Surface& surface)
{
    return site.ledger.account(surface.account).side == dust::Side::outside ? dust::Pathway::recovered : dust::Pathway::none;
}

}

Area vacuum(Site& site, const Part& cleaned, const Vacuuming& how)
{
    insist(how.minutes_per_square_meter > 0.0, "cleaning takes time");
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_under_nozzle(surface, cleaned.patches);
    const dust::Nozzle nozzle = nozzle_of(how);
    const dust::Pathway pathway = pathway_from(site, surface);
    const double through = std::min(most_blown, dust::exhaust_penetration(how.kind).typical * site.uncertain.exhaust);
    for (const bool is_edge : {false, true}) {
        const Going going = going_over(how, is_edge);
        const double loosened = dust::worked_loose(kind, nozzle, going.exposure);
        const double stirred = std::min(0.5, dust::raised_by_chore(going.exposure) * site.uncertain.raised);
        dust::PerClass<double> taken;
        for (const dust::SizeClass k : dust::all_classes()) {
            const dust::CleaningRate rate = dust::vacuum_rate(kind, k, nozzle, is_edge, site.uncertain.edge_penalty) * site.uncertain.vacuum;
            taken[k] = going.coverage * (1.0 - dust::vacuum_residual(rate, going.exposure));
        }
        for (const std::size_t p : cleaned.patches) {
            if ((surface.is_edge[p] != 0) != is_edge) continue;
            for (const dust::SizeClass k : dust::all_classes()) {
                if (loosened > 0.0) site.ledger.move(surface.bound(p, k), surface.free(p, k), k, part(surface.patches[p].bound[k], loosened));
                if (dust::is_raised_by_chore(k)) raise_into_air(site, surface.free(p, k), surface.zone, k, part(surface.patches[p].free[k], stirred));
                const Amount sucked = part(surface.patches[p].free[k], taken[k]);
                const Amount blown = is_exhausted(k) ? part(sucked, through) : Amount{};
                raise_into_air(site, surface.free(p, k), surface.zone, k, blown);
                site.ledger.move(surface.free(p, k), site.vacuum.free(k), k, sucked - blown, pathway);
            }
        }
    }
    const auto edges = static_cast<double>(how.does_edges ? std::count_if(cleaned.patches.begin(), cleaned.patches.end(), [&](std::size_t p) { return surface.is_edge[p] != 0; }) : 0);
    return surface.patch_area * (static_cast<double>(cleaned.patches.size()) + edges);
}

Area wipe(Site& site, const Part& cleaned, bool changes_cloth)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_of(surface);
    const double fresh = dust::fresh_wipe(dust::Cloth::wet).typical;
    const dust::Pathway pathway = pathway_from(site, surface);
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

void wipe_dry(Site& site, const Part& cleaned)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const double fresh = dust::fresh_wipe(dust::Cloth::electrostatic_dry).typical;
    const dust::Pathway pathway = pathway_from(site, surface);
    Mass on_face{};
    for (const std::size_t p : cleaned.patches) {
        for (const dust::SizeClass k : dust::all_classes()) {
            const Amount taken = part(surface.patches[p].free[k], dust::wipe_share(dust::Cloth::electrostatic_dry, k, fresh, on_face));
            site.ledger.move(surface.free(p, k), site.cloths.free(k), k, taken, pathway);
            on_face += mass(taken.dust);
        }
    }
}

Area mop(Site& site, const Part& cleaned, Rinsing rinsing, int water_changes)
{
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceTraits& traits = dust::surface_traits(kind_of(surface));
    const dust::Pathway pathway = pathway_from(site, surface);
    const double into_water = rinsing == Rinsing::separate_water ? dust::two_buckets : dust::one_bucket;
    const double left_behind = dust::brought_back(dust::wrung_film, surface.patch_area, bucket);
    const auto fillings = static_cast<std::size_t>(1 + water_changes);
    dust::PerClass<Amount> in_water;    // of what the wash water holds: in the bucket that the mop is wetted with
    for (std::size_t i = 0; i < cleaned.patches.size(); ++i) {
        if (i > 0 && i * fillings / cleaned.patches.size() != (i - 1) * fillings / cleaned.patches.size()) in_water = {};
        const std::size_t p = cleaned.patches[i];
        const double met = dust::coverage_of(surface.is_edge[p] != 0 ? dust::edge_pass_coverage : dust::pass_coverage, mopping_passes);
        for (const dust::SizeClass k : dust::all_classes()) {
            // Wetting loosens part of what is bound; the mop then takes the same share of it.
            site.ledger.move(surface.bound(p, k), surface.free(p, k), k, part(surface.patches[p].bound[k], traits.wet_bound * met));
            const Amount lifted = part(surface.patches[p].free[k], traits.wet_free * met);
            site.ledger.move(surface.free(p, k), site.mop_water.free(k), k, lifted, pathway);
            in_water[k] += part(lifted, into_water);
            const Amount back = part(in_water[k], left_behind);
            site.ledger.move(site.mop_water.free(k), surface.free(p, k), k, back, pathway);
            in_water[k] -= back;
        }
    }
    surface.wet_until = site.now + site.scenario.drying;
    return surface.patch_area * static_cast<double>(cleaned.patches.size());
}

void mark_cleaned(Site& site, const Part& part)
{
    for (const std::size_t p : part.patches) site.surfaces[part.surface].is_cleaned[p] = 1;
}

void walk_along(Site& site, Worker& who, const Part& part, Footing footing)
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
        if (footing == Footing::may_be_clean && site.surfaces[top.surface].is_cleaned[top.patch] != 0) ++on_cleaned;
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
            // Toward the door they stand on what this pass has still before it, though an earlier pass may have cleaned it.
            if (is_level_floor) walk_along(site, who, part, path == job::CleaningPath::toward_door ? Footing::still_to_clean : Footing::may_be_clean);
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

dust::VacuumKind vacuum_kind(const job::Supply& supply)
{
    if (supply.kind != job::SupplyKindOf::hepa_vacuum) return dust::VacuumKind::ordinary;
    return supply.has_leak ? dust::VacuumKind::hepa_leaking : dust::VacuumKind::hepa_sealed;
}

dust::VacuumKind vacuum_kind(const Site& site, const job::SupplyId& supply)
{
    const job::Supply* found = find_supply(site, supply);
    return found == nullptr ? dust::VacuumKind::ordinary : vacuum_kind(*found);
}

}
