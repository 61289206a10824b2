#include "site/air_paths.hpp"

#include "air/crack_penetration.hpp"
#include "air/doorway.hpp"
#include "air/gusts.hpp"
#include "air/network.hpp"
#include "core/insist.hpp"
#include "dust/settling.hpp"
#include "mechanics/flap_leak.hpp"
#include "site/place.hpp"
#include "site/site.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::site {

namespace {

// Leak areas: judgment inside the bands of docs/model.md, "Leaks".
constexpr Area door_perimeter_leak = 0.004_m2;      // a closed leaf, without its undercut
constexpr Area window_leak = 0.001_m2;              // a closed sash
constexpr Area open_register = 0.03_m2;
constexpr double louver_share = 0.3;                // closed louvers pass this share of an open register
constexpr Area taped_register = 0.0001_m2;
constexpr Area loose_register = 0.003_m2;           // covered, not taped down
constexpr double taped_seam_per_meter = 1e-5;       // m2 of leak per m of taped edge
constexpr double loose_seam_per_meter = 1e-3;
constexpr Pressure fan_pressure = 50.0_Pa;          // what a blower can hold against a covered register
constexpr double opening_discharge = 0.6;
constexpr Length near_opening = 1.0_m;              // air within this distance is what an opening draws
constexpr Length near_walls = 0.5_m;                // and cracks of the walls
constexpr double wall_leak_share = 5e-5;            // cracks of a zone's outer walls, of its floor area
constexpr double work_room_walls = 0.25;            // the work room's share of that: fewer of its walls are outer ones (judgment)

Length perimeter(const job::Opening& o) { return (o.width + o.height) * 2.0; }
Area seam(const job::Opening& o, bool is_taped) { return perimeter(o) * Length{is_taped ? taped_seam_per_meter : loose_seam_per_meter}; }
bool is_register(const OpeningState& o) { return job::is_register(o.plan.kind); }
/// Does the blower move air through it? An exhaust is only a hole to the outdoors.
bool is_of_blower(const OpeningState& o) { return is_register(o) && o.plan.kind != job::OpeningKindOf::exhaust; }
bool is_open_doorway(const OpeningState& o) { return o.plan.kind == job::OpeningKindOf::door && o.is_open && !o.flap && !o.is_covered; }
/// A slit sheet alone, or one that is not held: a loose curtain.
bool is_loose_curtain(const OpeningState& o) { return o.flap && (o.flap->sheets < 2 || !o.flap->is_taped); }

/// Gusts push the sheets to and fro: the mean of what is open one standard deviation to either side.
Area flap_leak(Site& site, const OpeningState& o, Pressure toward_room)
{
    const mechanics::FlapDoor door = hung_door(o);
    const std::vector<mechanics::Lean>& leans = site.flaps.leans(door);
    const Area hole = (mechanics::leak_area(door, leans, toward_room + air::gust_rms) + mechanics::leak_area(door, leans, toward_room - air::gust_rms)) * 0.5;
    // What hangs loose passes no more of an open doorway than hanging strips do.
    Area leak = std::min(hole, o.plan.width * o.plan.height * air::loose_curtain_share) + seam(o.plan, o.flap->is_taped);
    if (site.flaps.swing(door, mechanics::Heading::into_room).has_torn_loose) leak += seam(o.plan, false);   // people went through when they hung it
    return leak * site.uncertain.leak;
}

/// Hole of an opening as it is now. For a flap, at the pressure that pushes its second sheet off the slit.
Area leak_area(Site& site, const OpeningState& o, Pressure toward_room)
{
    const job::Opening& plan = o.plan;
    const double uncertain = site.uncertain.leak;
    switch (plan.kind) {
        case job::OpeningKindOf::window:
            if (o.is_open) return plan.width * plan.height * 0.5;
            return (o.seam_layers > 0 ? seam(plan, true) : window_leak) * uncertain;
        case job::OpeningKindOf::door:
            if (o.flap) return flap_leak(site, o, toward_room);
            if (o.is_covered) return seam(plan, o.is_cover_taped) * uncertain;
            if (o.is_open) return plan.width * plan.height;
            return plan.width * plan.undercut + (o.seam_layers > 0 ? seam(plan, true) : door_perimeter_leak) * uncertain;
        default:
            if (o.is_covered) return (o.is_cover_taped ? taped_register : loose_register) * uncertain;
            return o.is_open ? open_register : open_register * louver_share;
    }
}

// Cracks as dust meets them, all taken as level (judgment): how far apart their faces are and how deep they go.
constexpr air::Crack sash_crack{0.5_mm, 40.0_mm};
constexpr air::Crack leaf_crack{2.0_mm, 40.0_mm};           // around a closed door
constexpr air::Crack tape_wrinkle{0.5_mm, 25.0_mm};         // taped film leaks where it wrinkles, not all along
constexpr air::Crack loose_film{2.0_mm, 25.0_mm};
constexpr air::Crack wall_crack{1.0_mm, 100.0_mm};
constexpr Length leaf_thickness = 40.0_mm;

/// Share of each class that comes through a crack while the pressure across it wanders about its mean.
dust::PerClass<double> through(const air::Crack& crack, Pressure mean)
{
    const Pressure usual{std::sqrt(mean.si * mean.si + air::gust_rms.si * air::gust_rms.si)};
    dust::PerClass<double> passes;
    for (const dust::SizeClass k : dust::all_classes()) passes[k] = air::crack_penetration(crack, dust::settling_speed(dust::typical_diameter(k), {}), usual, {});
    return passes;
}

/// What of the dust in its air an opening lets through as it is now.
dust::PerClass<double> passes_of(const Site& site, const OpeningState& o, Pressure mean)
{
    const job::Opening& plan = o.plan;
    if (o.flap || (o.is_open && !o.is_covered)) return AirPath{}.passes;   // film is thin: no depth to settle in
    if (o.is_covered) return through(o.is_cover_taped ? tape_wrinkle : loose_film, mean);
    if (is_register(o)) return AirPath{}.passes;
    const air::Crack around = o.seam_layers > 0 ? tape_wrinkle : plan.kind == job::OpeningKindOf::window ? sash_crack : leaf_crack;
    dust::PerClass<double> passes = through(around, mean);
    if (plan.kind != job::OpeningKindOf::door || plan.undercut <= Length{}) return passes;
    const Area below = plan.width * plan.undercut;
    const Area beside = (o.seam_layers > 0 ? seam(plan, true) : door_perimeter_leak) * site.uncertain.leak;
    const dust::PerClass<double> under = through({plan.undercut, leaf_thickness}, mean);
    for (const dust::SizeClass k : dust::all_classes()) passes[k] = (under[k] * below.si + passes[k] * beside.si) / (below + beside).si;
    return passes;
}

/// Air a blower still moves through a register as it is: a cover leaves what its leak passes at the blower's pressure.
AirFlow fan_flow(Site& site, const OpeningState& o, AirFlow when_open, Density air)
{
    if (!o.is_covered) return o.is_open ? when_open : when_open * louver_share;
    return std::min(when_open, air::flow(air::leak_of({leak_area(site, o, Pressure{}), opening_discharge}, air), fan_pressure));
}

/// The zone that stands for the rest of the house: the largest plain room.
std::size_t house_zone(const Site& site)
{
    std::size_t best = site.work_room;
    for (std::size_t z = 0; z < site.zones.size(); ++z)
        if (z != site.work_room && site.zones[z].plan.role != job::ZoneRole::closet && (best == site.work_room || site.zones[z].volume > site.zones[best].volume)) best = z;
    return best;
}

std::size_t other_zone(const Site& site, const OpeningState& o)
{
    if (is_of_blower(o)) return house_zone(site);
    return o.leads_to.value_or(air::outdoors);
}

/// A register of the rest of the house joins it to itself: no air that the zones can tell apart.
bool joins_two_zones(const Site& site, const OpeningState& o) { return other_zone(site, o) != o.zone; }

dust::Pathway pathway_out(const OpeningState& o)
{
    if (is_of_blower(o)) return dust::Pathway::return_air;
    return o.plan.kind == job::OpeningKindOf::door && (o.flap || o.is_open) ? dust::Pathway::doorway : dust::Pathway::seam;
}

void add_path(Site& site, AirPath path, dust::Pathway way_out)
{
    if (path.flow <= AirFlow{}) return;
    if (path.from == air::outdoors) {
        if (path.to == site.work_room) site.air.fresh.push_back({path.opening, path.flow});
        return;
    }
    if (path.from == site.work_room) path.pathway = way_out;
    if (path.to == site.work_room) path.pathway = dust::Pathway::recovered;   // what comes back in had left by some other way
    site.air.paths.push_back(path);
}

/// Both ways between two zones, or a zone and the outdoors.
void add_paths(Site& site, std::optional<std::size_t> opening, std::size_t here, std::size_t there, air::TwoWayFlow flow, const dust::PerClass<double>& passes)
{
    const dust::Pathway way_out = opening ? pathway_out(site.openings[*opening]) : dust::Pathway::seam;
    const auto end = [](std::size_t zone) { return zone == air::outdoors ? std::nullopt : std::optional(zone); };
    add_path(site, {here, end(there), opening, flow.out, dust::Pathway::none, false, passes}, way_out);
    add_path(site, {there, end(here), opening, flow.in, dust::Pathway::none, false, passes}, way_out);
}

}

std::vector<std::size_t> cells_near(const Site& site, std::optional<std::size_t> opening)
{
    const Zone& room = site.room();
    if (!opening) {
        const plan::Rect inner = plan::grown(room.raster.rect(), -near_walls);
        std::vector<std::size_t> cells;
        for (std::size_t cell = 0; cell < room.raster.size(); ++cell)
            if (!inner.contains(room.raster.center(cell))) cells.push_back(cell);
        return cells;
    }
    const OpeningState& o = site.openings[*opening];
    const plan::Point where = middle(o.zone == site.work_room ? room.plan : site.zones[o.zone].plan, o.plan);
    return room.raster.cells_within({where.x, where.y, {}, {}}, near_opening);
}

void refresh_air(Site& site)
{
    const air::Air indoors;
    const Density rho = air::density(indoors);
    const job::AirHandling& hvac = site.scenario.air_handling;
    const AirFlow return_flow = hvac.return_flow * site.uncertain.return_flow;
    const std::size_t house = house_zone(site);

    air::Network network;
    network.zones = site.zones.size();
    std::vector<std::optional<std::size_t>> of_link;   // opening of each link; nothing: outer walls
    const auto add_link = [&](std::optional<std::size_t> opening, std::size_t from, std::size_t to, Area hole) {
        network.links.push_back({from, to, air::leak_of({hole, opening_discharge}, rho), {}, 1.0});
        of_link.push_back(opening);
    };
    const auto build_links = [&](Pressure toward_room) {
        network.links.clear();
        of_link.clear();
        for (std::size_t i = 0; i < site.openings.size(); ++i) {
            const OpeningState& o = site.openings[i];
            if (is_of_blower(o) && site.is_hvac_running) continue;   // the blower decides
            if (joins_two_zones(site, o)) add_link(i, o.zone, other_zone(site, o), leak_area(site, o, toward_room));
        }
        for (std::size_t z = 0; z < site.zones.size(); ++z) {
            const double share = wall_leak_share * (z == site.work_room ? work_room_walls : 1.0) * site.uncertain.leak;
            add_link(std::nullopt, z, air::outdoors, site.zones[z].raster.rect().area() * share);
        }
    };
    if (site.is_hvac_running && house != site.work_room) {
        for (const OpeningState& o : site.openings) {
            if (!joins_two_zones(site, o)) continue;
            if (o.plan.kind == job::OpeningKindOf::return_air) network.fans.push_back({o.zone, house, fan_flow(site, o, return_flow, rho)});
            if (o.plan.kind == job::OpeningKindOf::supply) network.fans.push_back({house, o.zone, fan_flow(site, o, hvac.supply_flow, rho)});
        }
    }

    // The flap's leak follows the pressure across it: three rounds settle it.
    const OpeningState& door = entrance(site);
    const std::size_t beyond = door.zone == site.work_room ? *door.leads_to : door.zone;
    Pressure toward_room{};
    air::NetworkFlows flows;
    for (int round = 0; round < 3; ++round) {
        build_links(toward_room);
        auto solved = air::solve(network);
        insist(solved.has_value(), "every zone leaks to the outdoors, so pressures exist");
        flows = std::move(*solved);
        toward_room = flows.pressure[beyond] - flows.pressure[site.work_room];
    }

    site.air.paths.clear();
    site.air.fresh.clear();
    site.air.pressure = flows.pressure;
    const air::Air warmer{celsius(21.0), indoors.pressure};
    for (std::size_t l = 0; l < of_link.size(); ++l) {
        const air::Link& link = network.links[l];
        const Pressure mean = flows.pressure[link.from] - (link.to == air::outdoors ? Pressure{} : flows.pressure[link.to]);
        const air::TwoWayFlow gusts = air::gust_flow(link.leak, mean, air::gust_rms);
        if (!of_link[l]) {
            add_paths(site, std::nullopt, link.from, link.to, gusts, through(wall_crack, mean));
            continue;
        }
        const OpeningState& o = site.openings[*of_link[l]];
        const air::Doorway doorway{o.plan.width, o.plan.height, air::discharge_at(1.0)};
        air::TwoWayFlow both = gusts;
        if (is_open_doorway(o)) both = air::doorway_flow(doorway, indoors, warmer, flows.flow[l]);
        if (o.flap && !o.flap->is_taped) both = {std::max(flows.flow[l], AirFlow{}), std::max(-flows.flow[l], AirFlow{})};
        if (is_loose_curtain(o)) {
            const AirFlow loose = air::exchange_flow(doorway, indoors, warmer) * air::loose_curtain_share;
            both.out += loose;
            both.in += loose;
        }
        add_paths(site, of_link[l], link.from, link.to, both, passes_of(site, o, mean));
    }
    if (site.is_hvac_running) {
        for (std::size_t i = 0; i < site.openings.size(); ++i) {
            const OpeningState& o = site.openings[i];
            if (!is_of_blower(o) || !joins_two_zones(site, o)) continue;
            AirPath path;
            path.is_return = o.plan.kind == job::OpeningKindOf::return_air;
            path.from = path.is_return ? o.zone : house;
            path.to = path.is_return ? house : o.zone;
            path.opening = i;
            path.flow = fan_flow(site, o, path.is_return ? return_flow : hvac.supply_flow, rho);
            add_path(site, path, dust::Pathway::return_air);
        }
    }
    refresh_room_air(site);
    site.is_air_stale = false;
}

}
