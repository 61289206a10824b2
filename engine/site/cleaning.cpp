#include "site/cleaning.hpp"

#include "core/insist.hpp"
#include "dust/mopping.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"
#include "plan/walking.hpp"
#include "site/clothes.hpp"
#include "site/feet.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <cmath>
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

std::vector<std::size_t> cells_along(const plan::Raster& raster, const std::vector<bool>& is_blocked, const job::Route& route)
{
    std::vector<std::size_t> cells;
    std::vector<bool> is_taken(raster.size(), false);
    const auto take = [&](plan::Point at) {
        for (const std::size_t cell : raster.cells_within({at.x, at.y, {}, {}}, head_width * 0.5))
            if (!is_taken[cell] && !is_blocked[cell]) is_taken[cell] = true, cells.push_back(cell);
    };
    const auto point = [](const job::Waypoint& w) { return plan::Point{w.east, w.north}; };
    for (std::size_t i = 0; i < route.size(); ++i) {
        const plan::Point from = point(route[i > 0 ? i - 1 : 0]);
        const plan::Point to = point(route[i]);
        const double length = std::sqrt(((to.x - from.x) * (to.x - from.x) + (to.y - from.y) * (to.y - from.y)).si);
        const int pieces = std::max(1, static_cast<int>(std::ceil(length / (0.25 * head_width.si))));
        for (int p = 0; p <= pieces; ++p) {
            const double share = static_cast<double>(p) / pieces;
            take({from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share});
        }
    }
    return cells;
}

job::CleaningPath way_of(const Site& site, job::CleaningPath path, const job::Route& route)
{
    if (route.empty()) return path;
    const plan::Point door = door_of(site);
    const auto off = [&](const job::Waypoint& w) { return ((w.east - door.x) * (w.east - door.x) + (w.north - door.y) * (w.north - door.y)).si; };
    return off(route.back()) <= off(route.front()) ? job::CleaningPath::toward_door : job::CleaningPath::from_door;
}

Part floor_part(const Site& site, job::CleaningPath path, const job::Route& route)
{
    const Zone& room = site.room();
    const std::size_t floor = floor_of(site, site.work_room);
    std::vector<std::size_t> cells = route.empty() ? plan::strips_toward(room.raster, room.is_blocked, door_of(site)) : cells_along(room.raster, room.is_blocked, route);
    if (route.empty() && path == job::CleaningPath::from_door) std::reverse(cells.begin(), cells.end());
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

std::vector<Part> parts_of(const Site& site, job::Target target, job::CleaningPath path, const job::Route& route)
{
    std::vector<Part> parts;
    for (const std::size_t s : ledges(site)) {
        const SurfaceRole role = site.surfaces[s].role;
        const bool is_meant = target == job::Target::everything || (target == job::Target::sills && role == SurfaceRole::sill)
                              || (target == job::Target::counters && role == SurfaceRole::counter)
                              || (target == job::Target::objects && role == SurfaceRole::object_top);
        if (Part part = bare_part(site, s); is_meant && !part.patches.empty()) parts.push_back(std::move(part));
    }
    if (target == job::Target::everything || target == job::Target::floor) parts.push_back(floor_part(site, path, route));
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

/// Strokes in one direction follow the same lanes and miss the same places. Who crosses them meets other places with every
/// stroke, and at a published exposure misses hardly any: what was measured there has the operator's misses in it already.
Going going_over(const Vacuuming& how, const dust::Nozzle& nozzle, bool is_edge)
{
    const int times = is_edge && how.does_edges ? 2 : 1;
    const dust::Exposure exposure = dust::minutes_per_m2(how.minutes_per_square_meter * times);
    const int passes = how.crosses ? std::max(2 * times, static_cast<int>(dust::strokes_for(exposure, nozzle))) : times;
    return {exposure, dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, passes)};
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

double through_vacuum(const Site& site, dust::VacuumKind kind, dust::SizeClass k)
{
    return is_exhausted(k) ? std::min(most_blown, dust::exhaust_penetration(kind).typical * site.uncertain.exhaust) : 0.0;
}

double through_vacuum(const Site& site, const job::SupplyId& vacuum, dust::SizeClass k) { return through_vacuum(site, vacuum_kind(site, vacuum), k); }

Area vacuum(Site& site, const Part& cleaned, const Vacuuming& how)
{
    insist(how.minutes_per_square_meter > 0.0, "cleaning takes time");
    Surface& surface = site.surfaces[cleaned.surface];
    const dust::SurfaceKind kind = kind_under_nozzle(surface, cleaned.patches);
    const dust::Nozzle nozzle = nozzle_of(how);
    const dust::Pathway pathway = pathway_from(site, surface);
    for (const bool is_edge : {false, true}) {
        const Going going = going_over(how, nozzle, is_edge);
        const dust::CleaningRate loosening = dust::loosening_rate(kind, nozzle);
        const double stirred = std::min(0.5, dust::raised_by_chore(going.exposure) * site.uncertain.raised);
        dust::PerClass<dust::Suction> taken;
        for (const dust::SizeClass k : dust::all_classes()) {
            const dust::CleaningRate rate = dust::vacuum_rate(kind, k, nozzle, is_edge, site.uncertain.edge_penalty) * site.uncertain.vacuum;
            taken[k] = dust::suction(rate, loosening, going.exposure);
        }
        for (const std::size_t p : cleaned.patches) {
            if ((surface.is_edge[p] != 0) != is_edge) continue;
            for (const dust::SizeClass k : dust::all_classes()) {
                if (dust::is_raised_by_chore(k)) raise_into_air(site, surface.free(p, k), surface.zone, k, part(surface.patches[p].free[k], stirred));
                Amount sucked = part(surface.patches[p].free[k], going.coverage * taken[k].of_free);
                if (taken[k].loosened > 0.0) {
                    const Amount bound = surface.patches[p].bound[k];
                    const Amount loosened = part(bound, going.coverage * taken[k].loosened);
                    site.ledger.move(surface.bound(p, k), surface.free(p, k), k, loosened);
                    const Amount through_the_top = part(bound, going.coverage * taken[k].of_bound);
                    sucked += Amount{std::min(loosened.dust, through_the_top.dust), std::min(loosened.lead, through_the_top.lead)};
                }
                const Amount blown = part(sucked, through_vacuum(site, how.kind, k));
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
    std::vector<std::size_t> trodden;
    constexpr std::size_t cells_per_step = 14;   // a footfall for each 0.7 m of a 0.2 m wide stroke
    for (std::size_t i = 0; i < part.patches.size(); i += cells_per_step) {
        const std::size_t cell = surface.cells[part.patches[i]];
        if (zone.is_blocked[cell]) continue;
        const Spot top = zone.top[cell];
        if (footing == Footing::may_be_clean && site.surfaces[top.surface].is_cleaned[top.patch] != 0) ++on_cleaned;
        trodden.push_back(cell);
    }
    walk_over(site, who, trodden);
    measure(site, "stepped-on-cleaned", who.id.name, job::MeasureKind::number, on_cleaned);
}

void go_over(Site& site, const std::vector<job::PersonId>& by, const Part& part, job::CleaningPath path, const std::function<Area()>& clean, Time per_square_meter,
             dust::Stirring how)
{
    if (part.patches.empty()) return;
    const bool is_level_floor = site.surfaces[part.surface].height == Length{};
    const std::size_t zone = site.surfaces[part.surface].zone;
    const plan::Point start = site.zones[zone].raster.center(site.surfaces[part.surface].cells[part.patches.front()]);
    const auto walk = [&] {
        for (const job::PersonId& id : by) {
            Worker& who = worker(site, id);
            if (who.zone != zone) continue;
            // Toward the door they stand on what this pass has still before it, though an earlier pass may have cleaned it.
            if (is_level_floor) walk_along(site, who, part, path == job::CleaningPath::toward_door ? Footing::still_to_clean : Footing::may_be_clean);
            else walk_to(site, who, start);
        }
    };
    const bool is_toward_door = path == job::CleaningPath::toward_door;
    if (is_toward_door) walk();
    if (is_level_floor) {
        std::vector<std::size_t> cells;
        for (const std::size_t p : part.patches) cells.push_back(site.surfaces[part.surface].cells[p]);
        const Area lying = site.surfaces[part.surface].patch_area * static_cast<double>(cells.size());
        for (const job::PersonId& id : by)
            if (Worker& who = worker(site, id); who.zone == zone) soil_clothes(site, who, cells, how, per_square_meter * lying.si);
    }
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
