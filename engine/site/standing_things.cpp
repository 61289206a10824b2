#include "site/standing_things.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

plan::Rect cell_rect(const plan::Raster& raster, std::size_t cell)
{
    const plan::Point center = raster.center(cell);
    return {center.x - raster.cell_width() * 0.5, center.y - raster.cell_depth() * 0.5, raster.cell_width(), raster.cell_depth()};
}

}

std::vector<plan::Rect> standing_things(const Site& site, std::size_t zone)
{
    const plan::Raster& raster = site.zones[zone].raster;
    std::vector<plan::Rect> things;
    for (const Surface& surface : site.surfaces) {
        if (surface.zone != zone || !surface.is_there || (surface.role != SurfaceRole::object_top && surface.role != SurfaceRole::counter)) continue;
        // Cells are in order: the first and the last lie in opposite corners.
        const plan::Rect first = cell_rect(raster, surface.cells.front());
        const plan::Rect last = cell_rect(raster, surface.cells.back());
        things.push_back({first.west, first.south, last.east() - first.west, last.north() - first.south});
    }
    return things;
}

}
