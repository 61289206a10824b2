#include "site/air_paths.hpp"

#include "air/doorway.hpp"
#include "air/flap.hpp"
#include "air/gusts.hpp"
#include "air/network.hpp"
#include "core/insist.hpp"
#include "site/place.hpp"
#include "site/site.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

// Leak areas: judgment inside the bands of docs/model.md, "Leaks".
constexpr Area door_perimeter_leak = 0.004_m2;      // a closed leaf, without its undercut
constexpr Area window_leak = 0.001_m2;              // a closed sash
constexpr Area open_register = 0.03_m2;
constexpr double louver_share = 0.3;                // closed louvers pass this share of an open register
constexpr Area taped_register = 0.0001_m2;
constexpr Area loose_register = 0.003_m2;           // covered, not taped down
constexpr Area flap_slit = 0.005_m2;                // cut slit behind a weighted second sheet
constexpr Area bare_slit = 0.02_m2;                 // cut slit with nothing over it
constexpr double taped_seam_per_meter = 1e-5;       // m2 of leak per m of taped edge
constexpr double loose_seam_per_meter = 1e-3;
constexpr Pressure fan_pressure = 50.0_Pa;          // what a blower can hold against a covered register
constexpr double opening_discharge = 0.6;
constexpr Length near_opening = 1.0_m;              // air within this distance is what an opening draws

Length perimeter(const job::Opening& o) { return (o.width + o.height) * 2.0; }
Area seam(const job::Opening& o, bool is_taped) { return perimeter(o) * Length{is_taped ? taped_seam_per_meter : loose_seam_per_meter}; }
bool is_register(const OpeningState& o) { return o.plan.kind == job::OpeningKindOf::supply || o.plan.kind == job::OpeningKindOf::return_air; }
bool is_open_doorway(const OpeningState& o) { return o.plan.kind == job::OpeningKindOf::door && o.is_open && !o.flap && !o.is_covered; }

Area flap_leak(const OpeningState& o, Pressure toward_room)
{
    const FlapState& flap = *o.flap;
    Area leak = seam(o.plan, flap.is_taped);
    if (!flap.has_folds) leak += seam(o.plan, false);   // a taut sheet pulls its tape loose
    if (flap.sheets < 2) return leak + bare_slit;
    air::Flap sheet;
    sheet.length = o.plan.height;
    sheet.width = o.plan.width;
    sheet.sheet = Mass{0.14 * (o.plan.width * o.plan.height).si};   // 6 mil polyethylene, 0.14 kg/m2
    sheet.dowel = flap.has_dowel ? 0.25_kg : 0.0_kg;
    // Without its weight the second sheet hangs off the slit; a short one leaves part of it bare.
    Area slit = flap.has_dowel ? flap_slit : flap_slit * 2.0;
    constexpr Length usual_gap = 6.0_in;
    if (flap.gap > usual_gap) slit += (bare_slit - flap_slit) * std::min(1.0, (flap.gap - usual_gap) / 2.0_ft);
    return leak + air::leak_area(sheet, slit, toward_room);
}

/// Hole of an opening as it is now. For a flap, at the pressure that pushes its second sheet off the slit.
Area leak_area(const OpeningState& o, Pressure toward_room)
{
    const job::Opening& plan = o.plan;
    switch (plan.kind) {
        case job::OpeningKindOf::window:
            if (o.is_open) return plan.width * plan.height * 0.5;
            return o.seam_layers > 0 ? seam(plan, true) : window_leak;
        case job::OpeningKindOf::door:
            if (o.flap) return flap_leak(o, toward_room);
            if (o.is_covered) return o.is_cover_taped ? seam(plan, true) : seam(plan, false);
            if (o.is_open) return plan.width * plan.height;
            return plan.width * plan.undercut + (o.seam_layers > 0 ? seam(plan, true) : door_perimeter_leak);
        default:
            if (o.is_covered) return o.is_cover_taped ? taped_register : loose_register;
            return o.is_open ? open_register : open_register * louver_share;
    }
}

/// Air a blower still moves through a register as it is: a cover leaves what its leak passes at the blower's pressure.
AirFlow fan_flow(const OpeningState& o, AirFlow when_open, Density air)
{
    if (!o.is_covered) return o.is_open ? when_open : when_open * louver_share;
    return std::min(when_open, air::flow(air::leak_of({leak_area(o, Pressure{}), opening_discharge}, air), fan_pressure));
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
    if (is_register(o)) return house_zone(site);
    return o.leads_to.value_or(air::outdoors);
}

/// A register of the rest of the house joins it to itself: no air that the zones can tell apart.
bool joins_two_zones(const Site& site, const OpeningState& o) { return other_zone(site, o) != o.zone; }

void add_paths(Site& site, std::size_t index, air::TwoWayFlow flow)
{
    const OpeningState& o = site.openings[index];
    const std::size_t there = other_zone(site, o);
    const dust::Pathway across = is_register(o)                                             ? dust::Pathway::return_air
                                 : o.plan.kind == job::OpeningKindOf::door && (o.flap || o.is_open) ? dust::Pathway::doorway
                                                                                            : dust::Pathway::seam;
    const auto add = [&](std::size_t from, std::size_t to, AirFlow q) {
        if (from == air::outdoors || q <= AirFlow{}) return;
        AirPath path{from, to == air::outdoors ? std::nullopt : std::optional(to), index, q, dust::Pathway::none, false};
        if (from == site.work_room) path.pathway = across;
        if (to == site.work_room) path.pathway = dust::Pathway::recovered;   // what comes back in had left by some other way
        site.air.paths.push_back(path);
    };
    add(o.zone, there, flow.out);
    add(there, o.zone, flow.in);
}

void tell_cloud(Site& site)
{
    const Zone& room = site.room();
    std::fill(site.cloud_room.leaving.begin(), site.cloud_room.leaving.end(), 0.0F);
    for (const AirPath& path : site.air.paths) {
        if (path.from != site.work_room) continue;
        const std::vector<std::size_t> cells = cells_near(site, path.opening);
        const Volume near = room.raster.cell_area() * room.plan.ceiling * static_cast<double>(cells.size());
        for (const std::size_t cell : cells) site.cloud_room.leaving[cell] += static_cast<float>((path.flow / near).si);
    }
}

}

std::vector<std::size_t> cells_near(const Site& site, std::size_t opening_index)
{
    const Zone& room = site.room();
    const OpeningState& o = site.openings[opening_index];
    const plan::Point where = middle(o.zone == site.work_room ? room.plan : site.zones[o.zone].plan, o.plan);
    return room.raster.cells_within({where.x, where.y, {}, {}}, near_opening);
}

void refresh_air(Site& site)
{
    const air::Air indoors;
    const Density rho = air::density(indoors);
    const job::AirHandling& hvac = site.scenario.air_handling;
    const std::size_t house = house_zone(site);

    air::Network network;
    network.zones = site.zones.size();
    std::vector<std::size_t> of_link;   // opening of each link
    const auto build_links = [&](Pressure toward_room) {
        network.links.clear();
        of_link.clear();
        for (std::size_t i = 0; i < site.openings.size(); ++i) {
            const OpeningState& o = site.openings[i];
            if (is_register(o) && site.is_hvac_running) continue;   // the blower decides
            if (!joins_two_zones(site, o)) continue;
            network.links.push_back({o.zone, other_zone(site, o), air::leak_of({leak_area(o, toward_room), opening_discharge}, rho), {}, 1.0});
            of_link.push_back(i);
        }
        // Every zone but the work room leaks a little to the outdoors through its outer walls: 0.5 cm2 per m2 of floor (judgment).
        for (std::size_t z = 0; z < site.zones.size(); ++z) {
            const double share = z == site.work_room ? 0.25 : 1.0;
            network.links.push_back({z, air::outdoors, air::leak_of({site.zones[z].raster.rect().area() * (5e-5 * share), opening_discharge}, rho), {}, 1.0});
        }
    };
    if (site.is_hvac_running && house != site.work_room) {
        for (const OpeningState& o : site.openings) {
            if (!joins_two_zones(site, o)) continue;
            if (o.plan.kind == job::OpeningKindOf::return_air) network.fans.push_back({o.zone, house, fan_flow(o, hvac.return_flow, rho)});
            if (o.plan.kind == job::OpeningKindOf::supply) network.fans.push_back({house, o.zone, fan_flow(o, hvac.supply_flow, rho)});
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
    site.air.pressure = flows.pressure;
    for (std::size_t l = 0; l < of_link.size(); ++l) {
        const OpeningState& o = site.openings[of_link[l]];
        const air::Link& link = network.links[l];
        if (is_open_doorway(o)) {
            const air::Air warmer{celsius(21.0), indoors.pressure};
            add_paths(site, of_link[l], air::doorway_flow({o.plan.width, o.plan.height, air::discharge_at(1.0)}, indoors, warmer, flows.flow[l]));
            continue;
        }
        const Pressure mean = flows.pressure[link.from] - (link.to == air::outdoors ? Pressure{} : flows.pressure[link.to]);
        air::TwoWayFlow gusts = air::gust_flow(link.leak, mean, air::gust_rms);
        if (o.flap && o.flap->sheets < 2) {   // one slit sheet behaves like a loose curtain
            const AirFlow loose = air::exchange_flow({o.plan.width, o.plan.height, air::discharge_at(1.0)}, indoors, {celsius(21.0), indoors.pressure}) * air::loose_curtain_share;
            gusts.out += loose;
            gusts.in += loose;
        }
        add_paths(site, of_link[l], gusts);
    }
    if (site.is_hvac_running) {
        for (std::size_t i = 0; i < site.openings.size(); ++i) {
            const OpeningState& o = site.openings[i];
            if (!joins_two_zones(site, o)) continue;
            if (o.plan.kind == job::OpeningKindOf::return_air)
                site.air.paths.push_back({o.zone, house, i, fan_flow(o, hvac.return_flow, rho), o.zone == site.work_room ? dust::Pathway::return_air : dust::Pathway::none, true});
            if (o.plan.kind == job::OpeningKindOf::supply)
                site.air.paths.push_back({house, o.zone, i, fan_flow(o, hvac.supply_flow, rho), o.zone == site.work_room ? dust::Pathway::recovered : dust::Pathway::none, false});
        }
    }
    tell_cloud(site);
    site.is_air_stale = false;
}

}
