#include "site/site.hpp"

#include "core/insist.hpp"
#include "dust/old_dust.hpp"
#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"
#include "site/place.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::site {

namespace {

constexpr Length fine_cell = 0.1_m;
constexpr Length coarse_cell = 0.3_m;
constexpr Length edge_strip = 0.15_m;      // the strip along walls and things that is three times harder to clean
constexpr Length panel = 0.5_m;            // width of one patch of wall
constexpr int wall_bands = 3;

void add_surface(Site& site, Surface surface, std::string account)
{
    surface.account = site.ledger.open(std::move(account), surface.zone == site.work_room ? dust::Side::inside : dust::Side::outside);
    const std::size_t count = surface.cells.size();
    surface.patches.resize(count);
    surface.is_edge.resize(count, 0);
    surface.is_cleaned.resize(count, 0);
    site.surfaces.push_back(std::move(surface));
}

/// A level surface over the raster cells of a part of a zone; at least the nearest cell, so that nothing gets lost.
Surface level_surface(const Site& site, std::size_t zone, const plan::Rect& part, SurfaceRole role, std::string name, Length height)
{
    const plan::Raster& raster = site.zones[zone].raster;
    Surface surface;
    surface.name = std::move(name);
    surface.role = role;
    surface.zone = zone;
    surface.height = height;
    surface.cells = raster.cells_in(part);
    if (surface.cells.empty()) surface.cells.push_back(raster.cell_at(part.center()));
    surface.patch_area = part.area() / static_cast<double>(surface.cells.size());
    return surface;
}

void add_zone(Site& site, const job::Zone& plan)
{
    Zone zone;
    zone.plan = plan;
    const bool is_fine = plan.role == job::ZoneRole::work_room || plan.role == job::ZoneRole::passage;
    zone.raster = plan::Raster(footprint(plan), is_fine ? fine_cell : coarse_cell);
    zone.is_blocked.assign(zone.raster.size(), false);
    zone.top.resize(zone.raster.size());
    zone.volume = plan.width * plan.depth * plan.ceiling;
    zone.air_account = site.ledger.open(plan.title + ", air", plan.role == job::ZoneRole::work_room ? dust::Side::inside : dust::Side::outside);
    site.zones.push_back(std::move(zone));
}

void add_floor(Site& site, std::size_t index)
{
    const Zone& zone = site.zones[index];
    Surface floor = level_surface(site, index, zone.raster.rect(), SurfaceRole::floor, zone.plan.title + ", floor", Length{});
    floor.finish = zone.plan.floor;
    add_surface(site, std::move(floor), zone.plan.title + ", floor");
}

/// A fitted carpet is a floor of its own that lies over the bare one: it hides those cells of it for good.
void add_carpets(Site& site, std::size_t index)
{
    const Zone& zone = site.zones[index];
    for (const job::Carpet& carpet : site.scenario.carpets) {
        if (carpet.zone != zone.plan.id) continue;
        Surface surface = level_surface(site, index, {carpet.west, carpet.south, carpet.width, carpet.depth}, SurfaceRole::floor, carpet.title, Length{});
        surface.finish = job::FloorKind::carpet;
        add_surface(site, std::move(surface), carpet.title);
    }
}

void mark_edges(Site& site, std::size_t index)
{
    const Zone& zone = site.zones[index];
    for (Surface& surface : site.surfaces) {
        if (surface.zone != index || surface.role != SurfaceRole::floor) continue;
        for (std::size_t p = 0; p < surface.cells.size(); ++p) {
            const plan::Point center = zone.raster.center(surface.cells[p]);
            bool is_edge = !plan::grown(zone.raster.rect(), -edge_strip).contains(center);
            for (const job::Object& object : site.scenario.objects)
                if (object.zone == zone.plan.id && !object.can_move)
                    is_edge = is_edge || plan::distance({object.west, object.south, object.width, object.depth}, center) < edge_strip;
            surface.is_edge[p] = is_edge;
        }
    }
}

/// One surface a wall: three height bands of panels, lowest band first.
void add_walls(Site& site, std::size_t index)
{
    const Zone& zone = site.zones[index];
    constexpr std::array sides{job::WallSide::south, job::WallSide::east, job::WallSide::north, job::WallSide::west};
    for (const job::WallSide side : sides) {
        const bool is_across = side == job::WallSide::south || side == job::WallSide::north;
        const Length length = is_across ? zone.plan.width : zone.plan.depth;
        const auto panels = static_cast<std::size_t>(std::max(1.0, length / panel));
        Surface wall;
        wall.name = zone.plan.title + ", " + std::string(word_of(side)) + " wall";
        wall.role = SurfaceRole::wall;
        wall.zone = index;
        wall.patch_area = length * zone.plan.ceiling / static_cast<double>(panels * wall_bands);
        for (int band = 0; band < wall_bands; ++band) {
            for (std::size_t p = 0; p < panels; ++p) {
                const Length from = length * ((static_cast<double>(p) + 0.5) / static_cast<double>(panels));
                wall.cells.push_back(zone.raster.cell_at(along_wall(zone.plan, side, from, Length{}, Length{}).center()));
                wall.band.push_back(static_cast<std::uint8_t>(band));
            }
        }
        std::string account = wall.name;
        add_surface(site, std::move(wall), std::move(account));
    }
}

void add_things(Site& site)
{
    for (const job::Object& object : site.scenario.objects) {
        const auto zone = static_cast<std::size_t>(find_by_id(site.scenario.zones, object.zone) - site.scenario.zones.data());
        const plan::Rect where{object.west, object.south, object.width, object.depth};
        Surface top = level_surface(site, zone, where, SurfaceRole::object_top, object.title, object.height);
        top.is_soft = object.is_soft;
        add_surface(site, std::move(top), object.title);
    }
    for (const job::Sill& sill : site.scenario.sills) {
        const job::Opening* window = find_by_id(site.scenario.openings, sill.window);
        const auto zone = static_cast<std::size_t>(find_by_id(site.scenario.zones, window->zone) - site.scenario.zones.data());
        add_surface(site, level_surface(site, zone, footprint(site.scenario, sill), SurfaceRole::sill, sill.title, window->above_floor), sill.title);
    }
    for (const job::Counter& counter : site.scenario.counters) {
        const auto zone = static_cast<std::size_t>(find_by_id(site.scenario.zones, counter.zone) - site.scenario.zones.data());
        const plan::Rect where{counter.west, counter.south, counter.width, counter.depth};
        add_surface(site, level_surface(site, zone, where, SurfaceRole::counter, counter.title, counter.height), counter.title);
    }
}

void add_openings(Site& site)
{
    for (const job::Opening& plan : site.scenario.openings) {
        OpeningState state;
        state.plan = plan;
        state.zone = static_cast<std::size_t>(find_by_id(site.scenario.zones, plan.zone) - site.scenario.zones.data());
        if (const job::Zone* beyond = find_by_id(site.scenario.zones, plan.leads_to))
            state.leads_to = static_cast<std::size_t>(beyond - site.scenario.zones.data());
        state.is_open = plan.is_open;
        site.openings.push_back(std::move(state));
    }
}

void add_crew(Site& site)
{
    for (const job::Person& person : site.scenario.crew) {
        Worker worker;
        worker.id = person.id;
        worker.title = person.title;
        worker.role = person.role;
        worker.is_trained = person.role == job::Role::certified_renovator;
        const dust::AccountId soles = site.ledger.open("soles of " + person.title, dust::Side::inside);
        for (Shoe& shoe : worker.shoes) shoe.sole.account = soles;
        worker.clothes.account = site.ledger.open("clothes of " + person.title, dust::Side::inside);
        worker.is_inside = true;
        worker.zone = site.work_room;
        worker.at = site.room().raster.rect().center();
        site.crew.push_back(std::move(worker));
    }
}

/// Old dust on one patch, partly trodden in.
void find_dust(Site& site, std::size_t s, std::size_t patch, Loading dust_before, Loading lead_before)
{
    Surface& surface = site.surfaces[s];
    const double bound = std::min(most_bound, dust::old_bound_share(kind_of(surface)).typical * site.uncertain.bound);
    const dust::PerClass<double> shares = dust::dust_shares(dust::old_dust);
    const Mass dust = dust_before * surface.patch_area;
    const Mass lead = std::min(lead_before, dust_before) * surface.patch_area;
    for (const dust::SizeClass k : dust::all_classes()) {
        const Amount all{picograms(dust * shares[k]), picograms(lead * shares[k])};
        const Amount in_cracks = part(all, bound);
        site.ledger.find(site.there_before, surface.bound(patch, k), k, in_cracks);
        site.ledger.find(site.there_before, surface.free(patch, k), k, all - in_cracks);
    }
}

/// Does a carpet, or something that stays where it is, lie on that cell of a floor? What is under it comes to nobody.
bool is_hidden_for_good(const Site& site, std::size_t floor, std::size_t patch)
{
    const Surface& top = site.surfaces[site.zones[site.surfaces[floor].zone].top[site.surfaces[floor].cells[patch]].surface];
    if (&top == &site.surfaces[floor] || top.role == SurfaceRole::sill) return false;
    const auto object = std::find_if(site.scenario.objects.begin(), site.scenario.objects.end(), [&](const job::Object& o) { return o.title == top.name; });
    return top.role != SurfaceRole::object_top || object == site.scenario.objects.end() || !object->can_move;
}

/// What lies in the house before the crew comes: on floors, furniture and sills. Walls and counters count as clean.
void find_dust(Site& site)
{
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) {
        const Surface& surface = site.surfaces[s];
        const job::Zone& zone = site.zones[surface.zone].plan;
        const auto of_sill = std::find_if(site.scenario.sills.begin(), site.scenario.sills.end(), [&](const job::Sill& sill) { return sill.title == surface.name; });
        for (std::size_t p = 0; p < surface.patches.size(); ++p) {
            switch (surface.role) {
                case SurfaceRole::floor:
                    if (!is_hidden_for_good(site, s, p)) find_dust(site, s, p, zone.dust_before, zone.lead_before);
                    break;
                case SurfaceRole::object_top: find_dust(site, s, p, zone.dust_before, zone.lead_before); break;
                case SurfaceRole::sill: find_dust(site, s, p, of_sill->dust_before, of_sill->lead_before); break;
                default: break;
            }
        }
    }
}

void note_first_states(Site& site)
{
    presence_changed(site);
    set_state(site, "hvac-running", "", site.is_hvac_running);
    for (const OpeningState& o : site.openings) {
        const std::string& name = o.plan.id.name;
        if (o.plan.kind == job::OpeningKindOf::window) set_state(site, "window-closed", name, !o.is_open);
        else if (o.plan.kind == job::OpeningKindOf::door) set_state(site, "door-closed", name, !o.is_open);
        else set_state(site, "register-closed", name, !o.is_open);
    }
}

}

Site build(const job::Scenario& scenario, std::uint64_t seed, const dust::RunParameters& uncertain)
{
    Site site;
    site.scenario = scenario;
    site.seed = seed;
    site.uncertain = uncertain;
    site.now = whole_seconds(scenario.start);
    site.paint = site.ledger.open("paint", dust::Side::paint);
    site.there_before = site.ledger.open("there before the job", dust::Side::before);
    for (std::size_t z = 0; z < scenario.zones.size(); ++z) {
        if (scenario.zones[z].role == job::ZoneRole::work_room) site.work_room = z;
        add_zone(site, scenario.zones[z]);
    }
    for (std::size_t z = 0; z < site.zones.size(); ++z) {
        add_floor(site, z);
        add_carpets(site, z);
        mark_edges(site, z);
    }
    add_walls(site, site.work_room);
    add_things(site);
    add_openings(site);
    add_crew(site);

    site.outdoors.account = site.ledger.open("outdoors", dust::Side::outside);
    site.duct.account = site.ledger.open("ducts", dust::Side::outside);
    site.filter.account = site.ledger.open("air handler filter", dust::Side::outside);
    site.tools.account = site.ledger.open("tools", dust::Side::inside);
    site.vacuum.account = site.ledger.open("vacuum", dust::Side::contained);
    site.cloths.account = site.ledger.open("used cloths", dust::Side::contained);
    site.mop_water.account = site.ledger.open("wash water", dust::Side::contained);
    site.tack_pad.account = site.ledger.open("tack pad", dust::Side::contained);
    site.bundle.account = site.ledger.open("folded sheeting", dust::Side::inside);
    site.store.account = site.ledger.open("waste store", dust::Side::contained);

    const dust::Air air;
    // A room people live in loses even its finest dust at a quarter an hour; what its furniture takes besides lands on it.
    const Speed least = dust::furnished_loss_rate(Rate{}, 1.0) * site.room().plan.ceiling;
    for (const dust::SizeClass k : dust::all_classes()) {
        site.deposition[k] = dust::deposition_speeds(k, air);
        site.deposition[k].floor = std::max(site.deposition[k].floor, least);
    }
    site.is_hvac_running = scenario.air_handling.is_running;
    for (const job::Supply& supply : scenario.supplies)
        if (supply.is_staged) site.staged.push_back(supply.id);
    note_first_states(site);
    refresh_tops(site);
    find_dust(site);
    return site;
}

void refresh_tops(Site& site)
{
    for (Zone& zone : site.zones) zone.is_blocked.assign(zone.raster.size(), false);
    Zone& room = site.room();
    site.cloud_room.raster = room.raster;
    site.cloud_room.ceiling = static_cast<float>(room.plan.ceiling.si);
    site.cloud_room.top.assign(room.raster.size(), 0.0F);
    site.cloud_room.leaving.assign(room.raster.size(), 0.0F);

    // The highest surface is on top; at one height the later role lies over the earlier, and the later laid over the first.
    std::vector<std::size_t> order;
    for (std::size_t s = 0; s < site.surfaces.size(); ++s)
        if (site.surfaces[s].is_there && site.surfaces[s].role != SurfaceRole::wall) order.push_back(s);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const Surface& left = site.surfaces[a];
        const Surface& right = site.surfaces[b];
        return left.height != right.height ? left.height < right.height : left.role < right.role;
    });
    for (const std::size_t s : order) {
        const Surface& surface = site.surfaces[s];
        Zone& zone = site.zones[surface.zone];
        for (std::size_t p = 0; p < surface.cells.size(); ++p) {
            const std::size_t cell = surface.cells[p];
            zone.top[cell] = {s, p};
            if (surface.role == SurfaceRole::object_top || surface.role == SurfaceRole::counter) zone.is_blocked[cell] = true;
            if (surface.zone == site.work_room) site.cloud_room.top[cell] = static_cast<float>(surface.height.si);
        }
    }
    site.is_air_stale = true;
}

}
