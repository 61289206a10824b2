#include "air/room_flow.hpp"

#include "core/insist.hpp"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <utility>

namespace flapdoor::air {

namespace {

using Matrix = Eigen::SparseMatrix<double>;

constexpr std::size_t sets_kept = 4;

bool is_air(double free_height) { return free_height >= least_free_height; }

/// How easily air crosses the sides to the east and to the north, [cell], m.
struct Sides {
    std::vector<double> east, north;
};

Sides sides_of(const RoomPlan& room)
{
    const std::size_t columns = room.raster.columns();
    const double slender = room.raster.cell_depth() / room.raster.cell_width();
    Sides sides{std::vector<double>(room.raster.size(), 0.0), std::vector<double>(room.raster.size(), 0.0)};
    const auto between = [&](std::size_t a, std::size_t b) {
        const double height = std::min(room.free_height[a], room.free_height[b]);
        return is_air(height) ? height : 0.0;
    };
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
        if (room.raster.column(cell) + 1 < columns) sides.east[cell] = between(cell, cell + 1) * slender;
        if (cell + columns < room.raster.size()) sides.north[cell] = between(cell, cell + columns) / slender;
    }
    return sides;
}

/// [cell] the first cell of the part of the room that it can be reached from; walls are parts of their own.
std::vector<std::size_t> parts_of(const Sides& sides, std::size_t columns)
{
    const std::size_t cells = sides.east.size();
    std::vector<std::size_t> part(cells, cells);
    std::vector<std::size_t> waiting;
    for (std::size_t first = 0; first < cells; ++first) {
        if (part[first] < cells) continue;
        waiting.push_back(first);
        while (!waiting.empty()) {
            const std::size_t cell = waiting.back();
            waiting.pop_back();
            if (part[cell] < cells) continue;
            part[cell] = first;
            if (sides.east[cell] > 0.0) waiting.push_back(cell + 1);
            if (cell > 0 && sides.east[cell - 1] > 0.0) waiting.push_back(cell - 1);
            if (sides.north[cell] > 0.0) waiting.push_back(cell + columns);
            if (cell >= columns && sides.north[cell - columns] > 0.0) waiting.push_back(cell - columns);
        }
    }
    return part;
}

/// Each part of the room gets sources that add up to zero.
void balance(const RoomPlan& room, const std::vector<std::size_t>& part, std::vector<double>& sources)
{
    std::vector<double> excess(part.size(), 0.0);
    std::vector<double> height(part.size(), 0.0);
    for (std::size_t cell = 0; cell < part.size(); ++cell) {
        excess[part[cell]] += sources[cell];
        height[part[cell]] += room.free_height[cell];
    }
    for (std::size_t cell = 0; cell < part.size(); ++cell)
        if (is_air(room.free_height[cell])) sources[cell] -= excess[part[cell]] * (room.free_height[cell] / height[part[cell]]);
}

}

struct RoomFlow::Factors {
    RoomPlan room;
    Sides sides;
    std::vector<std::size_t> part;
    Eigen::SimplicialLDLT<Matrix> solver;

    explicit Factors(const RoomPlan& plan) : room(plan), sides(sides_of(plan)), part(parts_of(sides, plan.raster.columns()))
    {
        const auto cells = static_cast<int>(part.size());
        const auto columns = static_cast<int>(plan.raster.columns());
        std::vector<Eigen::Triplet<double>> entries;
        std::vector<double> diagonal(part.size(), 0.0);
        const auto join = [&](int a, int b, double ease) {
            if (ease <= 0.0) return;
            entries.emplace_back(b, a, -ease);   // the lower triangle is all that is read
            diagonal[static_cast<std::size_t>(a)] += ease;
            diagonal[static_cast<std::size_t>(b)] += ease;
        };
        for (int cell = 0; cell < cells; ++cell) {
            join(cell, cell + 1, sides.east[static_cast<std::size_t>(cell)]);
            join(cell, cell + columns, sides.north[static_cast<std::size_t>(cell)]);
        }
        for (int cell = 0; cell < cells; ++cell) {
            // One cell of each part is held at a potential of its own: without sources in sum nothing flows there, whatever it is.
            const auto here = static_cast<std::size_t>(cell);
            entries.emplace_back(cell, cell, diagonal[here] + (part[here] == here ? 1.0 : 0.0));
        }
        Matrix matrix(cells, cells);
        matrix.setFromTriplets(entries.begin(), entries.end());
        solver.compute(matrix);
        insist(solver.info() == Eigen::Success, "a grounded conductance matrix is positive definite");
    }

    bool is_of(const RoomPlan& plan) const
    {
        return room.raster.columns() == plan.raster.columns() && room.raster.rows() == plan.raster.rows() && room.raster.cell_width() == plan.raster.cell_width()
            && room.raster.cell_depth() == plan.raster.cell_depth() && room.free_height == plan.free_height;
    }
};

SideFlows RoomFlow::solve(const RoomPlan& room, std::vector<double> sources)
{
    insist(room.free_height.size() == room.raster.size() && sources.size() == room.raster.size(), "one height and one source per cell");
    for (std::size_t cell = 0; cell < sources.size(); ++cell)
        insist(std::isfinite(sources[cell]) && (sources[cell] == 0.0 || is_air(room.free_height[cell])), "air is blown into air");
    const auto found = std::find_if(kept_.begin(), kept_.end(), [&](const auto& factors) { return factors->is_of(room); });
    if (found == kept_.end()) {
        kept_.insert(kept_.begin(), std::make_shared<const Factors>(room));
        if (kept_.size() > sets_kept) kept_.pop_back();
        ++factored_;
    }
    else std::rotate(kept_.begin(), found, found + 1);
    const Factors& factors = *kept_.front();

    balance(room, factors.part, sources);
    const Eigen::VectorXd potential = factors.solver.solve(Eigen::Map<const Eigen::VectorXd>(sources.data(), static_cast<Eigen::Index>(sources.size())));
    const std::size_t columns = room.raster.columns();
    SideFlows flows{std::vector<double>(sources.size(), 0.0), std::vector<double>(sources.size(), 0.0)};
    const auto at = [&](std::size_t cell) { return potential[static_cast<Eigen::Index>(cell)]; };
    for (std::size_t cell = 0; cell < sources.size(); ++cell) {
        if (factors.sides.east[cell] > 0.0) flows.east[cell] = factors.sides.east[cell] * (at(cell) - at(cell + 1));
        if (factors.sides.north[cell] > 0.0) flows.north[cell] = factors.sides.north[cell] * (at(cell) - at(cell + columns));
    }
    return flows;
}

Speed fastest(const RoomPlan& room, const SideFlows& flows)
{
    const std::size_t columns = room.raster.columns();
    double speed = 0.0;
    const auto see = [&](double flow, std::size_t a, std::size_t b, Length width) {
        if (flow != 0.0) speed = std::max(speed, std::abs(flow) / (width.si * std::min(room.free_height[a], room.free_height[b])));
    };
    for (std::size_t cell = 0; cell < flows.east.size(); ++cell) {
        see(flows.east[cell], cell, cell + 1, room.raster.cell_depth());
        see(flows.north[cell], cell, cell + columns, room.raster.cell_width());
    }
    return {speed};
}

}
