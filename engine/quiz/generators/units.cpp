#include "quiz/making/generator.hpp"

#include "rules/things.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {
namespace {

struct Side {
    Length length;
    double feet() const { return length / 1.0_ft; }
};

constexpr Mistake<Side> side_mistakes[] = {
    {"three-feet-a-meter", [](const Side& s) { return s.feet() / 3.0; }},
    {"upside-down", [](const Side& s) { return s.feet() / meters_per_foot; }},
    {"inches-for-feet", [](const Side& s) { return s.feet() * 0.254; }},
    {"yards-for-feet", [](const Side& s) { return s.feet() * 0.9144; }},
};

struct Floor {
    Area area;
    double square_feet() const { return area / 1.0_ft2; }
};

constexpr Mistake<Floor> floor_mistakes[] = {
    {"length-factor", [](const Floor& f) { return f.square_feet() * meters_per_foot; }},
    {"three-feet-a-meter", [](const Floor& f) { return f.square_feet() / 9.0; }},
    {"three-square-feet-a-square-meter", [](const Floor& f) { return f.square_feet() / 3.0; }},
    {"upside-down", [](const Floor& f) { return f.square_feet() / (1.0_ft2).si; }},
};

/// A room's side in meters.
std::optional<Made> feet_to_meters(const Setting& setting)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr) return std::nullopt;
    const std::vector<Length> sides{room->width, room->depth, room->ceiling};
    const Side side{setting.dice("feet-to-meters").one_of(sides)};
    auto figure = made_figure(side, side.length.si, side_mistakes, as_plain_meters, 0.01);
    if (!figure) return std::nullopt;
    figure->is_choice_only = true;
    return Made{{{"length", phrase(text::show_short(side.length))}}, std::move(*figure)};
}

/// A whole floor, or the part of it along one wall, in square meters.
std::optional<Made> square_feet_to_square_meters(const Setting& setting)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr) return std::nullopt;
    const int depth = static_cast<int>(room->depth / 1.0_ft);
    const Floor floor{room->width * (1.0_ft * setting.dice("square-feet-to-square-meters").between(std::min(4, depth), depth))};
    auto figure = made_figure(floor, floor.area.si, floor_mistakes, as_plain_square_meters, 0.01);
    if (!figure) return std::nullopt;
    figure->is_choice_only = true;
    return Made{{{"area", phrase(text::show_short(floor.area))}}, std::move(*figure)};
}

}

std::vector<Generator> unit_generators()
{
    return {{"feet-to-meters", {"length"}, names_of(side_mistakes), feet_to_meters},
            {"square-feet-to-square-meters", {"area"}, names_of(floor_mistakes), square_feet_to_square_meters}};
}

}
