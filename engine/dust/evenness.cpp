#include "dust/evenness.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::dust {

namespace {

constexpr std::size_t across = 3;
constexpr double least_parcels = 36.0;      // two a box
constexpr double least_air = 1e-3;
constexpr double near_enough = 0.05;        // of the mass is in another box than it would be

/// Chi square that chance exceeds once in a hundred times (Wilson & Hilferty 1931).
double chi_square_limit(double degrees)
{
    const double k = 2.0 / (9.0 * degrees);
    const double root = 1.0 - k + 2.3263 * std::sqrt(k);
    return degrees * root * root * root;
}

std::size_t third(std::size_t index, std::size_t of) { return index * across / of; }

}

CoarseBoxes::CoarseBoxes(const CloudRoom& room) : columns_(room.raster.columns()), rows_(room.raster.rows()),
    columns_per_meter_(static_cast<float>(columns_) / room.width()), rows_per_meter_(static_cast<float>(rows_) / room.depth()), middle_(0.5F * room.ceiling)
{
    double all = 0.0;
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
        const std::size_t box = 2 * (third(room.raster.row(cell), rows_) * across + third(room.raster.column(cell), columns_));
        const double low = static_cast<double>(std::max(0.0F, middle_ - room.top[cell]));
        const double high = static_cast<double>(room.ceiling - std::max(middle_, room.top[cell]));
        air_[box] += low;
        air_[box + 1] += high;
        all += low + high;
    }
    if (all > 0.0)
        for (double& air : air_) air /= all;
}

std::size_t CoarseBoxes::box_at(float x, float y, float z) const
{
    const auto column = std::min(static_cast<std::size_t>(x * columns_per_meter_), columns_ - 1);
    const auto row = std::min(static_cast<std::size_t>(y * rows_per_meter_), rows_ - 1);
    return 2 * (third(row, rows_) * across + third(column, columns_)) + (z > middle_ ? 1 : 0);
}

void Spread::add(std::size_t box, double mass)
{
    mass_[box] += mass;
    sum_ += mass;
    squares_ += mass * mass;
}

double Spread::effective_parcels() const { return squares_ > 0.0 ? sum_ * sum_ / squares_ : 0.0; }

bool Spread::is_even(const CoarseBoxes& boxes) const
{
    const double parcels = effective_parcels();
    if (parcels < least_parcels) return false;
    double chi_square = 0.0;
    double misplaced = 0.0;
    double counted = 0.0;
    for (std::size_t box = 0; box < CoarseBoxes::count; ++box) {
        const double air = boxes.air(box);
        if (air < least_air) continue;
        const double excess = mass_[box] / sum_ - air;
        chi_square += parcels * excess * excess / air;
        misplaced += 0.5 * std::abs(excess);
        counted += 1.0;
    }
    return misplaced <= near_enough || (counted > 1.5 && chi_square <= chi_square_limit(counted - 1.0));
}

}
