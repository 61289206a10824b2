#include "window/run/cells.hpp"

#include "window/run/moment.hpp"

#include <algorithm>
#include <vector>

namespace flapdoor::window {

namespace {

/// Cells from one column up to another in some rows, all of them marked.
struct Patch {
    std::size_t first_column, end_column, first_row, end_row;
};

/// Runs of marked cells row by row; runs that stand on an equal one below grow it.
std::vector<Patch> patches(const plan::Raster& raster, std::span<const std::uint8_t> marked)
{
    std::vector<Patch> found;
    std::vector<std::size_t> below; // in `found`, those that reach the row before
    for (std::size_t row = 0; row < raster.rows(); ++row) {
        std::vector<std::size_t> here;
        for (std::size_t column = 0; column < raster.columns(); ++column) {
            if (marked[row * raster.columns() + column] == 0) continue;
            const std::size_t first = column;
            while (column < raster.columns() && marked[row * raster.columns() + column] != 0) ++column;
            const auto same = std::find_if(below.begin(), below.end(),
                                           [&](std::size_t p) { return found[p].first_column == first && found[p].end_column == column; });
            if (same != below.end()) {
                found[*same].end_row = row + 1;
                here.push_back(*same);
            }
            else {
                here.push_back(found.size());
                found.push_back({first, column, row, row + 1});
            }
        }
        below = std::move(here);
    }
    return found;
}

void draw_edges(Board& board, const plan::Raster& raster, std::span<const std::uint8_t> marked)
{
    const PaperBox floor = paper(raster.rect());
    const double w = raster.cell_width().si;
    const double d = raster.cell_depth().si;
    const auto is_marked = [&](std::size_t column, std::size_t row) {
        return column < raster.columns() && row < raster.rows() && marked[row * raster.columns() + column] != 0;
    };
    const auto corner = [&](std::size_t column, std::size_t row) {
        return board.at(PaperPoint{floor.low.x + static_cast<double>(column) * w, floor.low.y + static_cast<double>(row) * d});
    };
    const Color color = board.theme().sheeting;
    // Edges in one line are drawn in one stroke. "Below" row 0 wraps to a huge number, which is no row.
    for (std::size_t row = 0; row <= raster.rows(); ++row)
        for (std::size_t column = 0; column < raster.columns(); ++column) {
            const std::size_t first = column;
            while (column < raster.columns() && is_marked(column, row) != is_marked(column, row - 1)) ++column;
            if (column > first) board.canvas.line(corner(first, row), corner(column, row), color, board.px(1.4F));
        }
    for (std::size_t column = 0; column <= raster.columns(); ++column)
        for (std::size_t row = 0; row < raster.rows(); ++row) {
            const std::size_t first = row;
            while (row < raster.rows() && is_marked(column, row) != is_marked(column - 1, row)) ++row;
            if (row > first) board.canvas.line(corner(column, first), corner(column, row), color, board.px(1.4F));
        }
}

}

void draw_sheeted_cells(Board& board, const plan::Raster& raster, std::span<const std::uint8_t> marked)
{
    if (marked.size() != raster.size()) return;
    const PaperBox floor = paper(raster.rect());
    const double w = raster.cell_width().si;
    const double d = raster.cell_depth().si;
    const Theme& t = board.theme();
    for (const Patch& patch : patches(raster, marked)) {
        const PaperBox box{
            {floor.low.x + static_cast<double>(patch.first_column) * w, floor.low.y + static_cast<double>(patch.first_row) * d},
            {floor.low.x + static_cast<double>(patch.end_column) * w, floor.low.y + static_cast<double>(patch.end_row) * d}};
        const std::vector<PaperPoint> outline = corners(box);
        board.canvas.fill_convex(board.at(outline), faded(t.sheet, 0.12));
        draw_hatch(board, outline, board.px(10.0F), faded(t.sheet, 0.26), board.px(2.4F));
        draw_hatch(board, outline, board.px(10.0F), faded(t.sheeting, 0.85), board.px(1.0F));
    }
    draw_edges(board, raster, marked);
}

}
