#pragma once

#include "dust/cloud.hpp"

#include <array>
#include <cstddef>

namespace flapdoor::dust {

/// The air of a room in coarse boxes, three by three in plan and two in height, by which the spread of dust is judged.
class CoarseBoxes {
public:
    static constexpr std::size_t count = 18;

    CoarseBoxes() = default;
    explicit CoarseBoxes(const CloudRoom& room);

    /// The box that a place in the room is in.
    std::size_t box_at(float x, float y, float z) const;
    /// Share of the room's air that is in a box; what furniture fills does not count.
    double air(std::size_t box) const { return air_[box]; }

private:
    std::size_t columns_ = 1, rows_ = 1;
    float columns_per_meter_ = 0.0F, rows_per_meter_ = 0.0F, middle_ = 0.0F;
    std::array<double, count> air_{};
};

/// Parcels of one class, counted into the boxes.
class Spread {
public:
    void add(std::size_t box, double mass);

    /// Can the dust be taken for evenly spread? At least 36 parcels of equal weight, and their shares of mass either differ
    /// from the shares of air by no more than chance (Pearson's chi square with the effective number of parcels, p = 0.01) or
    /// by no more than 5 % of the mass in all. Boxes with less than 0.1 % of the air do not count.
    bool is_even(const CoarseBoxes& boxes) const;

    /// (sum of masses)^2 / sum of squares: as many equal parcels would scatter as much.
    double effective_parcels() const;

private:
    std::array<double, CoarseBoxes::count> mass_{};
    double sum_ = 0.0, squares_ = 0.0;
};

}
