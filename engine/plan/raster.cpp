#include "plan/raster.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::plan {

namespace {

std::size_t pieces(Length edge, Length cell) { return static_cast<std::size_t>(std::max(1.0, std::nearbyint(edge.si / cell.si))); }

std::size_t piece_at(Length along, Length edge, std::size_t count)
{
    const double position = along.si / edge.si * static_cast<double>(count);
    return static_cast<std::size_t>(std::clamp(position, 0.0, static_cast<double>(count) - 1.0));
}

}

Raster::Raster(const Rect& rect, Length cell) : rect_(rect), columns_(pieces(rect.width, cell)), rows_(pieces(rect.depth, cell))
{
    insist(rect.width > Length{} && rect.depth > Length{} && cell > Length{}, "a raster covers an area");
    insist(size() <= 4'000'000, "a raster has at most four million cells");
}

std::size_t Raster::cell_at(Point p) const
{
    return piece_at(p.y - rect_.south, rect_.depth, rows_) * columns_ + piece_at(p.x - rect_.west, rect_.width, columns_);
}

Point Raster::center(std::size_t cell) const
{
    return {rect_.west + cell_width() * (static_cast<double>(column(cell)) + 0.5), rect_.south + cell_depth() * (static_cast<double>(row(cell)) + 0.5)};
}

std::vector<std::size_t> Raster::cells_in(const Rect& part) const
{
    std::vector<std::size_t> cells;
    for (std::size_t cell = 0; cell < size(); ++cell)
        if (part.contains(center(cell))) cells.push_back(cell);
    return cells;
}

std::vector<std::size_t> Raster::cells_within(const Rect& from, Length reach) const
{
    // Only the block of cells that can be near enough is looked at.
    const std::size_t low = cell_at({from.west - reach, from.south - reach});
    const std::size_t high = cell_at({from.east() + reach, from.north() + reach});
    std::vector<std::size_t> cells;
    for (std::size_t row = this->row(low); row <= this->row(high); ++row)
        for (std::size_t cell = row * columns_ + column(low); cell <= row * columns_ + column(high); ++cell)
            if (distance(from, center(cell)) <= reach) cells.push_back(cell);
    return cells;
}

}
