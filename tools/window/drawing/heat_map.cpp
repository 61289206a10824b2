#include "window/drawing/heat_map.hpp"

#include "core/insist.hpp"
#include "text/ramp.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double faded_out = 0.10; // share below which the map fades into the floor
constexpr double strength = 0.92;  // so that the grid of the sheet still shows a little

std::size_t place(const HeatGrid& grid, int column, int row)
{
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(grid.columns) + static_cast<std::size_t>(column);
}

/// Share at a place given in cells, between the four cells about it, of the room of the cell it lies in.
double smooth_share(const HeatGrid& grid, const std::vector<float>& shares, double x, double y)
{
    const int column = std::clamp(static_cast<int>(x), 0, grid.columns - 1);
    const int row = std::clamp(static_cast<int>(y), 0, grid.rows - 1);
    const std::uint16_t room = grid.room[place(grid, column, row)];
    const double left = std::floor(x - 0.5);
    const double below = std::floor(y - 0.5);
    const double fx = x - 0.5 - left;
    const double fy = y - 0.5 - below;
    double sum = 0.0;
    double weights = 0.0;
    for (const int dy : {0, 1})
        for (const int dx : {0, 1}) {
            const int c = static_cast<int>(left) + dx;
            const int r = static_cast<int>(below) + dy;
            if (c < 0 || r < 0 || c >= grid.columns || r >= grid.rows || grid.room[place(grid, c, r)] != room) continue;
            const double weight = (dx == 1 ? fx : 1.0 - fx) * (dy == 1 ? fy : 1.0 - fy);
            sum += weight * static_cast<double>(shares[place(grid, c, r)]);
            weights += weight;
        }
    return weights > 0.0 ? sum / weights : static_cast<double>(shares[place(grid, column, row)]);
}

}

Color dust_ramp(double share)
{
    const text::Rgb c = text::dust_color(share);
    return {c.red, c.green, c.blue, 255};
}

double HeatScale::share(double loading) const { return loading > least ? text::share_of_decades(loading, least, most) : 0.0; }

double HeatScale::loading(double share) const { return least * std::pow(most / least, std::clamp(share, 0.0, 1.0)); }

Picture heat_picture(const HeatGrid& grid, const HeatScale& scale, const Ramp& ramp, int fineness)
{
    const auto cells = static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows);
    insist(grid.loading.size() == cells && grid.room.size() == cells, "a heat grid has all its cells");
    insist(fineness >= 1 && fineness <= 8, "1 to 8 pixels a cell");
    insist(scale.least > 0.0 && scale.most > scale.least, "a scale goes upwards from above 0");

    std::vector<float> shares(cells);
    for (std::size_t i = 0; i < cells; ++i) shares[i] = static_cast<float>(scale.share(static_cast<double>(grid.loading[i])));

    std::array<Color, 256> colors; // the ramp is slow; 256 of it are more than the eye tells apart
    for (std::size_t i = 0; i < colors.size(); ++i) {
        const double share = static_cast<double>(i) / 255.0;
        const double s = std::clamp(share / faded_out, 0.0, 1.0);
        colors[i] = faded(ramp(share), strength * s * s * (3.0 - 2.0 * s));
    }

    Picture picture(grid.columns * fineness, grid.rows * fineness);
    for (int row = 0; row < picture.height; ++row) {
        const double y = (static_cast<double>(picture.height - 1 - row) + 0.5) / fineness;
        for (int column = 0; column < picture.width; ++column) {
            const double x = (static_cast<double>(column) + 0.5) / fineness;
            if (grid.room[place(grid, column / fineness, (picture.height - 1 - row) / fineness)] == 0) continue;
            picture.at(column, row) = colors[static_cast<std::size_t>(std::lround(smooth_share(grid, shares, x, y) * 255.0))];
        }
    }
    return picture;
}

std::optional<double> loading_at(const HeatGrid& grid, PaperPoint at)
{
    const double x = std::floor((at.x - grid.low.x) / grid.cell);
    const double y = std::floor((at.y - grid.low.y) / grid.cell);
    if (x < 0.0 || y < 0.0 || x >= grid.columns || y >= grid.rows) return std::nullopt;
    const std::size_t cell = place(grid, static_cast<int>(x), static_cast<int>(y));
    if (grid.room[cell] == 0) return std::nullopt;
    return static_cast<double>(grid.loading[cell]);
}

}
