#include "window/drawing/name_places.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

bool NamePlaces::is_free(const Box& box) const
{
    return window_.contains(box) && std::none_of(taken_.begin(), taken_.end(), [&](const Box& other) { return other.overlaps(box); });
}

std::optional<Box> NamePlaces::place(const std::string& name, const std::string& words, std::span<const Box> places)
{
    const auto free = std::find_if(places.begin(), places.end(), [&](const Box& box) { return is_free(box); });
    if (free == places.end()) return std::nullopt;
    taken_.push_back(*free);
    placed_.push_back({name, words, *free});
    return *free;
}

std::vector<Box> places_around(Point center, Point size, float reach, float step, int rings)
{
    // Above and below first: there a name belongs to its figure at a glance.
    constexpr std::array<Point, 8> ways{
        {{0.0F, -1.0F}, {0.0F, 1.0F}, {1.0F, 0.0F}, {-1.0F, 0.0F}, {1.0F, -1.0F}, {-1.0F, -1.0F}, {1.0F, 1.0F}, {-1.0F, 1.0F}}};
    std::vector<Box> places;
    for (int ring = 0; ring < rings; ++ring)
        for (const Point way : ways) {
            const float off = reach + step * static_cast<float>(ring);
            places.push_back(box_around(center + Point{way.x * (off + size.x * 0.5F), way.y * (off + size.y * 0.5F)}, size));
        }
    return places;
}

std::vector<Box> places_within(const Box& whole, Point size)
{
    constexpr int steps = 6; // to each side of the middle
    const Point spare = whole.size() - size;
    if (spare.x < 0.0F || spare.y < 0.0F) return {};
    std::vector<std::array<int, 2>> cells;
    for (int row = -steps; row <= steps; ++row)
        for (int column = -steps; column <= steps; ++column) cells.push_back({column, row});
    std::stable_sort(cells.begin(), cells.end(), [](const auto& a, const auto& b) { return a[0] * a[0] + a[1] * a[1] < b[0] * b[0] + b[1] * b[1]; });
    std::vector<Box> places;
    for (const auto& [column, row] : cells) {
        const Point off{spare.x * static_cast<float>(column) / (2.0F * steps), spare.y * static_cast<float>(row) / (2.0F * steps)};
        places.push_back(box_around(whole.center() + off, size));
    }
    return places;
}

}
