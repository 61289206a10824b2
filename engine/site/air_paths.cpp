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
#include <array>
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
constexpr double wall_leak_share = 5e-4;            // cracks of a zone's outer walls, of its floor area: older houses, 5 to 12 cm2/m2 (Sherman & Dickerhoff 1998, memory)
constexpr double work_room_walls = 0.25;            // the work room's share of that: fewer of its walls are outer ones (judgment)

Length perimeter(const job::Opening& o) { return (o.width + o.height) * 2.0; }
Area seam(const job::Opening& o, bool is_taped) { return perimeter(o) * Length{is_taped ? taped_seam_per_meter : loose_seam_per_meter}; }
bool is_register(const OpeningState& o) { return job::is_register(o.plan.kind); }
/// Does the blower move air through it? An exhaust is only a hole to the outdoors.
bool is_of_blower(const OpeningState& o) { return is_register(o) && o.plan.kind != job::OpeningKindOf::exhaust; }
bool is_open_doorway(const OpeningState& o) { return o.plan.kind == job::OpeningKindOf::door && o.is_open && !o.flap && !o.is_covered; }
/// Does it move air out of doors by itself?
bool is_fan(const OpeningState& o) { return o.plan.kind == job::OpeningKindOf::exhaust && o.plan.fan_flow > AirFlow{}; }

/// Hole that a flap door leaves to a steady pressure across it.
Area flap_leak(Site& site, const OpeningState& o, Pressure toward_room)
{
    const mechanics::FlapDoor door = hung_door(o);
    // What hangs loose passes no more of an open doorway than hanging strips do.
    const Area hole = std::min(mechanics::leak_area(door, site.flaps.leans(door), toward_room), o.plan.width * o.plan.height * air::loose_curtain_share);
    Area leak = hole + seam(o.plan, o.flap->is_taped);
    if (site.flaps.swing(door, mechanics::Heading::into_room).has_torn_loose) leak += seam(o.plan, false);   // people went through when they hung it
    return leak * site.uncertain.leak;
}

/// A flap door as a leak that air pushes open or shut. Wind lasts long enough for the sheets to come to rest in it.
void hang_flap(Site& site, const OpeningState& o, bool is_out_of_room, air::Link& link, Density air)
{
    constexpr std::array sizes{0.0, 0.025, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.2};   // Pa
    const auto holes = [&](double sign) {
        std::vector<Area> found;
        for (const double size : sizes) {
            const Area hole = flap_leak(site, o, Pressure{sign * size});
            found.push_back(found.empty() ? hole : std::max(hole, found.back()));   // by grids of the solver a larger pressure may open less
        }
        return found;
    };
    const std::vector<Area> toward_room = holes(1.0);
    const std::vector<Area> out_of_room = holes(-1.0);
    const Area widest = std::max(toward_room.back(), out_of_room.back());
    const auto shares = [&](const std::vector<Area>& found) {
        std::vector<air::Openness> openings;
        for (std::size_t i = 0; i < sizes.size(); ++i) openings.push_back({Pressure{sizes[i]}, std::max(air::least_openness, found[i] / widest)});
        return openings;
    };
    link.leak = air::leak_of({widest, opening_discharge}, air);
    link.forward = shares(is_out_of_room ? out_of_room : toward_room);
    link.backward = shares(is_out_of_room ? toward_room : out_of_room);
}

/// Hole of an opening without a flap as it is now.
Area leak_area(const Site& site, const OpeningState& o)
{
    const job::Opening& plan = o.plan;
    const double uncertain = site.uncertain.leak;
    switch (plan.kind) {
        case job::OpeningKindOf::window:
            if (o.is_open) return plan.width * plan.height * 0.5;
            return (o.seam_layers > 0 ? seam(plan, true) : window_leak) * uncertain;
        case job::OpeningKindOf::door:
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

/// Share of each class that comes through a crack.
/// @param usual  size of the pressure across it
dust::PerClass<double> through(const air::Crack& crack, Pressure usual)
{
    dust::PerClass<double> passes;
    for (const dust::SizeClass k : dust::all_classes()) passes[k] = air::crack_penetration(crack, dust::settling_speed(dust::typical_diameter(k), {}), usual, {});
    return passes;
}

/// What of the dust in its air an opening lets through as it is now.
dust::PerClass<double> passes_of(const Site& site, const OpeningState& o, Pressure usual)
{
    const job::Opening& plan = o.plan;
    if (o.flap || (o.is_open && !o.is_covered)) return AirPath{}.passes;   // film is thin: no depth to settle in
    if (o.is_covered) return through(o.is_cover_taped ? tape_wrinkle : loose_film, usual);
    if (is_register(o)) return AirPath{}.passes;
    const air::Crack around = o.seam_layers > 0 ? tape_wrinkle : plan.kind == job::OpeningKindOf::window ? sash_crack : leaf_crack;
    dust::PerClass<double> passes = through(around, usual);
    if (plan.kind != job::OpeningKindOf::door || plan.undercut <= Length{}) return passes;
    const Area below = plan.width * plan.undercut;
    const Area beside = (o.seam_layers > 0 ? seam(plan, true) : door_perimeter_leak) * site.uncertain.leak;
    const dust::PerClass<double> under = through({plan.undercut, leaf_thickness}, usual);
    for (const dust::SizeClass k : dust::all_classes()) passes[k] = (under[k] * below.si + passes[k] * beside.si) / (below + beside).si;
    return passes;
}

/// Air a blower or a fan still moves through a register as it is: a cover leaves what its leak passes at the blower's pressure.
AirFlow fan_flow(const Site& site, const OpeningState& o, AirFlow when_open, Density air)
{
    if (!o.is_covered) return o.is_open ? when_open : when_open * louver_share;
    return std::min(when_open, air::flow(air::leak_of({leak_area(site, o), opening_discharge}, air), fan_pressure));
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

// What the wind does to one side of a house, in the order of air::Gust.
constexpr std::array all_sides{job::WallSide::south, job::WallSide::east, job::WallSide::north, job::WallSide::west};
using Weather = std::array<double, air::house_sides>;   // share of each side's gusts that a leak to the outdoors feels

/// The cracks of a zone are in those of its walls that no other zone stands behind: they feel the mean of the gusts there.
Weather weather_on_walls(const Site& site, std::size_t zone)
{
    constexpr Length behind = 0.4_m;    // thicker than any wall between rooms
    Weather felt{};
    double outer = 0.0;
    const job::Zone& plan = site.zones[zone].plan;
    for (std::size_t side = 0; side < all_sides.size(); ++side) {
        const bool is_along_x = all_sides[side] == job::WallSide::south || all_sides[side] == job::WallSide::north;
        const plan::Rect strip = plan::grown(along_wall(plan, all_sides[side], {}, is_along_x ? plan.width : plan.depth, Length{}), behind);
        const bool is_inner = std::any_of(site.zones.begin(), site.zones.end(), [&](const Zone& other) { return &other != &site.zones[zone] && plan::overlap(other.raster.rect(), strip); });
        felt[side] = is_inner ? 0.0 : 1.0;
        outer += felt[side];
    }
    for (double& side : felt) side = outer > 0.0 ? side / outer : 1.0 / static_cast<double>(all_sides.size());
    return felt;
}

Weather weather_at(const OpeningState& o)
{
    Weather felt{};
    felt[static_cast<std::size_t>(std::find(all_sides.begin(), all_sides.end(), o.plan.wall) - all_sides.begin())] = 1.0;
    return felt;
}

/// What pushes out through a leak that feels so much of each side's gust: wind pushes in.
Pressure drive_of(const air::Gust& gust, const Weather& felt)
{
    Pressure sum{};
    for (std::size_t side = 0; side < felt.size(); ++side) sum -= gust[side] * felt[side];
    return sum;
}

/// A link of the network with what it stands for.
struct Way {
    std::optional<std::size_t> opening;     // nothing: cracks of the outer walls
    Weather weather{};
    air::TwoWayFlow flow{};                 // mean over the moments of wind
    double square = 0.0;                    // mean square of the pressure across it, Pa2
};

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

namespace {

struct House {
    air::Network network;
    std::vector<Way> ways;                  // [link]
};

/// Everything that air gets through or is moved by, as it is now.
House house_as_it_stands(Site& site, std::size_t rest)
{
    const Density rho = air::density(air::Air{});
    const job::AirHandling& hvac = site.scenario.air_handling;
    House house;
    house.network.zones = site.zones.size();
    const auto add_link = [&](Way way, std::size_t from, std::size_t to, Area hole) -> air::Link& {
        house.ways.push_back(way);
        return house.network.links.emplace_back(air::Link{from, to, air::leak_of({hole, opening_discharge}, rho), {}, {}, {}});
    };
    const auto add_fan = [&](std::size_t from, std::size_t to, AirFlow flow) { house.network.fans.push_back({from, to, flow}); };
    for (std::size_t i = 0; i < site.openings.size(); ++i) {
        const OpeningState& o = site.openings[i];
        if (!joins_two_zones(site, o)) continue;
        if (is_fan(o)) {
            add_fan(o.zone, air::outdoors, fan_flow(site, o, o.plan.fan_flow, rho));
        } else if (is_of_blower(o) && site.is_hvac_running) {
            if (rest == site.work_room) continue;
            if (o.plan.kind == job::OpeningKindOf::return_air) add_fan(o.zone, rest, fan_flow(site, o, hvac.return_flow * site.uncertain.return_flow, rho));
            else add_fan(rest, o.zone, fan_flow(site, o, hvac.supply_flow, rho));
        } else {
            air::Link& link = add_link({i, weather_at(o)}, o.zone, other_zone(site, o), o.flap ? o.plan.width * o.plan.height : leak_area(site, o));
            if (o.flap) hang_flap(site, o, o.zone == site.work_room, link, rho);
        }
    }
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        const double share = wall_leak_share * (z == site.work_room ? work_room_walls : 1.0) * site.uncertain.leak;
        add_link({std::nullopt, weather_on_walls(site, z)}, z, air::outdoors, site.zones[z].raster.rect().area() * share);
    }
    return house;
}

/// One moment's flow through a link, both ways.
air::TwoWayFlow flow_at(const Site& site, const Way& way, const air::Link& link, Pressure across, AirFlow driven)
{
    if (!way.opening || !is_open_doorway(site.openings[*way.opening])) return air::with_drafts(link, across);
    const job::Opening& plan = site.openings[*way.opening].plan;
    constexpr air::Air indoors;
    return air::doorway_flow({plan.width, plan.height, air::discharge_at(1.0)}, indoors, {celsius(21.0), indoors.pressure}, driven);
}

/// Lets the wind blow: what goes each way on average, and the mean pressure of every zone.
std::vector<Pressure> blow(const Site& site, House& house)
{
    const std::vector<air::Gust>& moments = air::gusts();
    const double share = 1.0 / static_cast<double>(moments.size());
    std::vector<Pressure> mean(house.network.zones);
    for (const air::Gust& gust : moments) {
        for (std::size_t l = 0; l < house.ways.size(); ++l)
            if (air::Link& link = house.network.links[l]; link.to == air::outdoors) link.drive = drive_of(gust, house.ways[l].weather);
        const auto solved = air::solve(house.network);
        insist(solved.has_value(), "every zone leaks to the outdoors, so pressures exist");
        for (std::size_t z = 0; z < mean.size(); ++z) mean[z] += solved->pressure[z] * share;
        for (std::size_t l = 0; l < house.ways.size(); ++l) {
            Way& way = house.ways[l];
            const Pressure across = solved->across[l];
            const air::TwoWayFlow now = flow_at(site, way, house.network.links[l], across, solved->flow[l]);
            way.flow.out += now.out * share;
            way.flow.in += now.in * share;
            way.square += across.si * across.si * share;
        }
    }
    return mean;
}

}

void refresh_air(Site& site)
{
    const std::size_t rest = house_zone(site);
    House house = house_as_it_stands(site, rest);
    site.air.pressure = blow(site, house);
    site.air.paths.clear();
    site.air.fresh.clear();
    for (std::size_t l = 0; l < house.ways.size(); ++l) {
        const air::Link& link = house.network.links[l];
        const Way& way = house.ways[l];
        const Pressure usual{std::sqrt(way.square + air::draft_rms.si * air::draft_rms.si)};
        add_paths(site, way.opening, link.from, link.to, way.flow, way.opening ? passes_of(site, site.openings[*way.opening], usual) : through(wall_crack, usual));
    }
    for (std::size_t i = 0; i < site.openings.size(); ++i) {
        const OpeningState& o = site.openings[i];
        if (!joins_two_zones(site, o)) continue;
        const Density rho = air::density(air::Air{});
        AirPath path;
        path.opening = i;
        if (is_fan(o)) {
            path.from = o.zone;
            path.flow = fan_flow(site, o, o.plan.fan_flow, rho);
            add_path(site, path, dust::Pathway::seam);
        } else if (is_of_blower(o) && site.is_hvac_running) {
            path.is_return = o.plan.kind == job::OpeningKindOf::return_air;
            path.from = path.is_return ? o.zone : rest;
            path.to = path.is_return ? rest : o.zone;
            path.flow = fan_flow(site, o, path.is_return ? site.scenario.air_handling.return_flow * site.uncertain.return_flow : site.scenario.air_handling.supply_flow, rho);
            add_path(site, path, dust::Pathway::return_air);
        }
    }
    refresh_room_air(site);
    site.is_air_stale = false;
}

}
