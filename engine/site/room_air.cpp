#include "site/room_air.hpp"

#include "core/insist.hpp"
#include "dust/flight_log.hpp"
#include "site/air_paths.hpp"
#include "site/site.hpp"

#include <algorithm>
#include <optional>

namespace flapdoor::site {

namespace {

/// What of some cells is air: m3 in each, and together.
double air_over(const dust::CloudRoom& room, const std::vector<std::size_t>& cells)
{
    double sum = 0.0;
    for (const std::size_t cell : cells) sum += static_cast<double>(room.free_height(cell));
    return sum * room.raster.cell_area().si;
}

/// Adds a flow to the sources of cells, each according to its air.
void spread_over(const dust::CloudRoom& room, const std::vector<std::size_t>& cells, double rate, std::vector<double>& sources)
{
    for (const std::size_t cell : cells) sources[cell] += rate * static_cast<double>(room.free_height(cell)) * room.raster.cell_area().si;
}

}

void refresh_room_air(Site& site)
{
    dust::CloudRoom& room = site.cloud_room;
    RoomAir& air = site.room_air;
    std::vector<double> sources(room.raster.size(), 0.0);
    std::fill(room.leaving.begin(), room.leaving.end(), 0.0F);
    air.outlets.clear();
    for (std::size_t p = 0; p < site.air.paths.size(); ++p) {
        const AirPath& path = site.air.paths[p];
        if (path.from != site.work_room) continue;
        RoomAir::Outlet outlet{p, cells_near(site, path.opening), 0.0};
        const double volume = air_over(room, outlet.cells);
        if (!(volume > 0.0) || !(path.flow > AirFlow{})) continue;   // walled up, or nothing goes this way
        outlet.rate = path.flow.si / volume;
        spread_over(room, outlet.cells, -outlet.rate, sources);
        for (const std::size_t cell : outlet.cells)
            if (room.free_height(cell) > 0.0F) room.leaving[cell] += static_cast<float>(outlet.rate);
        air.outlets.push_back(std::move(outlet));
    }
    const auto let_in = [&](std::optional<std::size_t> opening, AirFlow flow) {
        const std::vector<std::size_t> cells = cells_near(site, opening);
        const double volume = air_over(room, cells);
        if (volume > 0.0) spread_over(room, cells, flow.si / volume, sources);
    };
    for (const AirPath& path : site.air.paths)
        if (path.to == site.work_room) let_in(path.opening, path.flow);
    for (const FreshAir& fresh : site.air.fresh) let_in(fresh.opening, fresh.flow);

    air::RoomPlan plan{room.raster, {}};
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) plan.free_height.push_back(static_cast<double>(room.free_height(cell)));
    room.flow = air.solver.solve(plan, std::move(sources));
    air.wind = air::fastest(plan, room.flow);
    air.boxes = dust::CoarseBoxes(room);
    air.table.cells.clear();
}

const dust::StepTable& step_table_for(Site& site, const dust::PerClass<dust::Motion>& motions)
{
    dust::StepTable& table = site.room_air.table;
    if (!table.cells.empty() && table.motions == motions) return table;
    table = dust::step_table(site.cloud_room, motions);
    site.room_air.table_print = dust::fingerprint(table);
    return table;
}

const AirPath& path_taken(const Site& site, std::size_t cell, double luck)
{
    const auto draws_here = [&](const RoomAir::Outlet& outlet) { return std::binary_search(outlet.cells.begin(), outlet.cells.end(), cell); };
    double all = 0.0;
    for (const RoomAir::Outlet& outlet : site.room_air.outlets)
        if (draws_here(outlet)) all += outlet.rate;
    const AirPath* taken = nullptr;
    double so_far = 0.0;
    for (const RoomAir::Outlet& outlet : site.room_air.outlets) {
        if (!draws_here(outlet)) continue;
        taken = &site.air.paths[outlet.path];
        so_far += outlet.rate;
        if (luck * all < so_far) break;
    }
    insist(taken != nullptr, "a parcel leaves near an opening");
    return *taken;
}

}
