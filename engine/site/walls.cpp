#include "site/walls.hpp"

#include "site/hands.hpp"
#include "site/landing.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr std::uint8_t highest_band = 2;
constexpr double knocked_down = 0.15;      // of what lies on a panel, onto the panel below (judgment)
constexpr double knocked_to_floor = 0.10;  // and onto what lies at its foot

void knock_loose(Site& site, std::size_t wall, std::size_t patch)
{
    Surface& surface = site.surfaces[wall];
    const std::size_t columns = surface.patches.size() / (highest_band + 1U);
    for (const dust::SizeClass k : dust::all_classes()) {
        const Amount there = surface.patches[patch].free[k];
        if (surface.band[patch] > 0) site.ledger.move(surface.free(patch, k), surface.free(patch - columns, k), k, part(there, knocked_down));
        land(site, surface.free(patch, k), site.work_room, surface.cells[patch], k, part(there, knocked_to_floor));
    }
}

}

void clean_walls(Site& site, const Team& by, job::WallOrder order, const std::function<void(Site&, const Part&)>& clean)
{
    for (std::size_t wall = 0; wall < site.surfaces.size(); ++wall) {
        if (site.surfaces[wall].role != SurfaceRole::wall) continue;
        gather(site, by, site.room().raster.center(site.surfaces[wall].cells.front()));
        for (std::uint8_t turn = 0; turn <= highest_band; ++turn) {
            const auto band = static_cast<std::uint8_t>(order == job::WallOrder::top_down ? highest_band - turn : turn);
            Part part{wall, {}};
            for (std::size_t p = 0; p < site.surfaces[wall].patches.size(); ++p)
                if (site.surfaces[wall].band[p] == band) part.patches.push_back(p);
            for (const std::size_t p : part.patches) knock_loose(site, wall, p);
            clean(site, part);
        }
        pass_time(site, job::VacuumWalls::takes * site.surfaces[wall].area().si);
    }
}

}
