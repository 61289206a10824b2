#include "plan/walking.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>

namespace flapdoor::plan {

namespace {

std::size_t nearest_free(const Raster& raster, const std::vector<bool>& is_blocked, Point p)
{
    const std::size_t wanted = raster.cell_at(p);
    if (!is_blocked[wanted]) return wanted;
    std::size_t best = raster.size();
    Length best_distance{std::numeric_limits<double>::max()};
    for (std::size_t cell = 0; cell < raster.size(); ++cell) {
        if (is_blocked[cell]) continue;
        const Length away = distance(p, raster.center(cell));
        if (away < best_distance) best = cell, best_distance = away;
    }
    return best;
}

struct Neighbor {
    int column, row;
    int cost;   ///< 10 straight, 14 diagonal: whole numbers keep ties the same everywhere
};
constexpr std::array<Neighbor, 8> neighbors{{{1, 0, 10}, {-1, 0, 10}, {0, 1, 10}, {0, -1, 10}, {1, 1, 14}, {1, -1, 14}, {-1, 1, 14}, {-1, -1, 14}}};

/// The cell beside `cell`, or size() when it lies outside, is blocked, or the way there cuts a blocked corner.
std::size_t step_to(const Raster& raster, const std::vector<bool>& is_blocked, std::size_t cell, const Neighbor& n)
{
    const auto column = static_cast<std::int64_t>(raster.column(cell)) + n.column;
    const auto row = static_cast<std::int64_t>(raster.row(cell)) + n.row;
    if (column < 0 || row < 0 || column >= static_cast<std::int64_t>(raster.columns()) || row >= static_cast<std::int64_t>(raster.rows())) return raster.size();
    const std::size_t next = static_cast<std::size_t>(row) * raster.columns() + static_cast<std::size_t>(column);
    const std::size_t beside = raster.row(cell) * raster.columns() + static_cast<std::size_t>(column);
    const std::size_t above = static_cast<std::size_t>(row) * raster.columns() + raster.column(cell);
    return is_blocked[next] || is_blocked[beside] || is_blocked[above] ? raster.size() : next;
}

}

std::vector<std::size_t> walk(const Raster& raster, const std::vector<bool>& is_blocked, Point from, Point to)
{
    insist(is_blocked.size() == raster.size(), "one flag per cell");
    const std::size_t start = nearest_free(raster, is_blocked, from);
    const std::size_t goal = nearest_free(raster, is_blocked, to);
    if (start == raster.size() || goal == raster.size()) return {};

    constexpr int unreached = std::numeric_limits<int>::max();
    std::vector<int> cost(raster.size(), unreached);
    std::vector<std::size_t> came_from(raster.size(), raster.size());
    std::vector<std::vector<std::size_t>> waiting(15);   // costs grow by 10 or 14 at most: a ring of buckets orders them
    cost[start] = 0;
    waiting[0].push_back(start);
    std::size_t open = 1;
    for (int now = 0; open > 0; ++now) {
        auto& bucket = waiting[static_cast<std::size_t>(now % 15)];
        const std::vector<std::size_t> cells = std::move(bucket);
        bucket.clear();
        open -= cells.size();
        for (const std::size_t cell : cells) {
            if (cost[cell] != now) continue;   // a shorter way was found meanwhile
            for (const Neighbor& n : neighbors) {
                const std::size_t next = step_to(raster, is_blocked, cell, n);
                if (next == raster.size() || now + n.cost >= cost[next]) continue;
                cost[next] = now + n.cost;
                came_from[next] = cell;
                waiting[static_cast<std::size_t>(cost[next] % 15)].push_back(next);
                ++open;
            }
        }
    }
    if (cost[goal] == unreached) return {};
    std::vector<std::size_t> path{goal};
    while (path.back() != start) path.push_back(came_from[path.back()]);
    std::reverse(path.begin(), path.end());
    return path;
}

std::vector<Point> footsteps(const Raster& raster, const std::vector<std::size_t>& path, Length stride)
{
    insist(stride > Length{}, "a stride has a length");
    std::vector<Point> points;
    if (path.empty()) return points;
    points.push_back(raster.center(path.front()));
    Length since_last{};
    for (std::size_t i = 1; i < path.size(); ++i) {
        since_last += distance(raster.center(path[i - 1]), raster.center(path[i]));
        if (since_last >= stride) {
            points.push_back(raster.center(path[i]));
            since_last = {};
        }
    }
    if (path.size() > 1 && since_last > Length{}) points.push_back(raster.center(path.back()));
    return points;
}

std::vector<std::size_t> strips_toward(const Raster& raster, const std::vector<bool>& is_blocked, Point exit)
{
    insist(is_blocked.size() == raster.size(), "one flag per cell");
    // Strips run across the longer way to the exit, so that backing from strip to strip ends at the door.
    const Point middle = raster.rect().center();
    const bool is_by_row = std::fabs(exit.y.si - middle.y.si) / raster.rect().depth.si >= std::fabs(exit.x.si - middle.x.si) / raster.rect().width.si;
    const std::size_t strips = is_by_row ? raster.rows() : raster.columns();
    const std::size_t length = is_by_row ? raster.columns() : raster.rows();
    const bool is_exit_low = is_by_row ? exit.y < middle.y : exit.x < middle.x;
    std::vector<std::size_t> cells;
    for (std::size_t s = 0; s < strips; ++s) {
        const std::size_t strip = is_exit_low ? strips - 1 - s : s;
        for (std::size_t i = 0; i < length; ++i) {
            const std::size_t along = s % 2 == 0 ? i : length - 1 - i;
            const std::size_t cell = is_by_row ? strip * raster.columns() + along : along * raster.columns() + strip;
            if (!is_blocked[cell]) cells.push_back(cell);
        }
    }
    return cells;
}

}
