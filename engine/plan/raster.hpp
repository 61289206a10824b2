#pragma once

#include "plan/rect.hpp"

#include <cstddef>
#include <vector>

namespace flapdoor::plan {

/// A rectangle cut into nearly square cells that fill it exactly. Cells are numbered row by row, row 0 at the south
/// edge, column 0 at the west edge: [row][column].
class Raster {
public:
    Raster() = default;
    /// @param cell  wished edge length; the real one is the nearest that divides the rectangle evenly
    Raster(const Rect& rect, Length cell);

    const Rect& rect() const { return rect_; }
    std::size_t columns() const { return columns_; }
    std::size_t rows() const { return rows_; }
    std::size_t size() const { return columns_ * rows_; }
    Length cell_width() const { return {rect_.width.si / static_cast<double>(columns_)}; }
    Length cell_depth() const { return {rect_.depth.si / static_cast<double>(rows_)}; }
    Area cell_area() const { return cell_width() * cell_depth(); }

    /// Points outside count to the nearest cell.
    std::size_t cell_at(Point p) const;
    Point center(std::size_t cell) const;
    std::size_t column(std::size_t cell) const { return cell % columns_; }
    std::size_t row(std::size_t cell) const { return cell / columns_; }

    /// Cells whose center lies inside, in cell order.
    std::vector<std::size_t> cells_in(const Rect& part) const;
    /// Cells whose center is at most `reach` away from `from`, in cell order.
    std::vector<std::size_t> cells_within(const Rect& from, Length reach) const;

private:
    Rect rect_{};
    std::size_t columns_ = 0;
    std::size_t rows_ = 0;
};

}
