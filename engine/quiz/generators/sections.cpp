#include "job/walls.hpp"
#include "plan/sections.hpp"
#include "quiz/making/generator.hpp"
#include "rules/cloths.hpp"
#include "rules/things.hpp"
#include "text/show.hpp"

#include <cmath>

namespace flapdoor::quiz {
namespace {

double square_feet(Area area) { return area / 1.0_ft2; }

/// A strip of hard floor along a wall.
struct Strip {
    Length along, reach;
    Area area() const { return along * reach; }
};

constexpr Mistake<Strip> strip_mistakes[] = {
    {"one-cloth-for-all", [](const Strip&) { return 1.0; }},
    {"rest-forgotten", [](const Strip& s) { return std::floor(square_feet(s.area()) / 40.0); }},
    {"wet-and-dry-each", [](const Strip& s) { return 2.0 * plan::sections_needed(s.area()); }},
    {"edge-for-area", [](const Strip& s) { return static_cast<double>(plan::sections_needed(2.0 * (s.along + s.reach) * 1.0_ft)); }},
    {"one-a-yard", [](const Strip& s) { return std::ceil(square_feet(s.area()) / 9.0); }},
};

std::optional<Made> cloths_for_floor(const Setting& setting)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr || room->floor == job::FloorKind::carpet) return std::nullopt;
    Dice dice = setting.dice("cloths-for-floor");
    const int depth = static_cast<int>(room->depth / 1.0_ft);
    const Strip strip{room->width, 1.0_ft * dice.between(std::min(4, depth), depth)};
    const auto figure = made_figure(strip, plan::sections_needed(strip.area()), strip_mistakes, as_count);
    if (!figure) return std::nullopt;
    return Made{{{"room", phrase(room->title)}, {"width", phrase(text::show_short(strip.along))}, {"reach", phrase(text::show_short(strip.reach))}}, *figure};
}

/// What is wiped for a room: floor sections, counter sections, sills; some floor sections come up darker once.
struct Verification {
    int floor = 0, counters = 0, sills = 0, failed = 0;

    double wet() const
    {
        std::vector<rules::ItemHistory> items;
        for (int i = 0; i < floor; ++i) items.push_back({i < failed ? 1 : 0, false, false});
        for (int i = 0; i < counters; ++i) items.push_back({});
        for (int i = 0; i < sills; ++i) items.push_back({0, true, false});
        return rules::count_cloths(items).wet_cloths;
    }
    double without(int left_out) const { return wet() - left_out; }
};

constexpr Mistake<Verification> verification_mistakes[] = {
    {"second-wipe-forgotten", [](const Verification& v) { return v.without(v.failed); }},
    {"sills-forgotten", [](const Verification& v) { return v.without(v.sills); }},
    {"one-cloth-for-the-floor", [](const Verification& v) { return v.without(v.floor - 1); }},
    {"counters-forgotten", [](const Verification& v) { return v.without(v.counters); }},
    {"everything-twice", [](const Verification& v) { return 2.0 * v.without(v.failed); }},
};

/// Hard floor of the work room: fitted carpets and what cannot be moved taken out.
Area bare_floor(const job::Scenario& scenario, const job::Zone& room)
{
    const plan::Rect floor = job::floor_of(room);
    Area bare = floor.area();
    const auto take_out = [&](const auto& thing) { bare -= plan::intersection(floor, {thing.west, thing.south, thing.width, thing.depth}).area(); };
    for (const job::Carpet& carpet : scenario.carpets) take_out(carpet);
    for (const job::Counter& counter : scenario.counters) take_out(counter);
    for (const job::Object& object : scenario.objects)
        if (!object.can_move) take_out(object);
    return bare;
}

std::optional<Made> verification_cloths(const Setting& setting)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr || room->floor == job::FloorKind::carpet) return std::nullopt;
    const Area floor = 1.0_ft2 * std::floor(square_feet(bare_floor(setting.scenario, *room)));
    Verification v;
    v.floor = plan::sections_needed(floor);
    v.sills = static_cast<int>(rules::things(rules::Each::sill, setting.scenario, {}).size());
    std::string counters;
    for (const job::Counter& counter : setting.scenario.counters) {
        const Area area = counter.width * counter.depth;
        v.counters += plan::sections_needed(area);
        counters += (counters.empty() ? "" : ", ") + text::show_short(area);
    }
    if (v.floor == 0) return std::nullopt;
    v.failed = setting.dice("verification-cloths").between(1, std::min(3, v.floor));
    const auto figure = made_figure(v, v.wet(), verification_mistakes, as_count);
    if (!figure) return std::nullopt;
    return Made{{{"room", phrase(room->title)}, {"area", phrase(text::show_short(floor))}, {"sills", as_count(v.sills).shown},
                 {"counters", phrase(counters.empty() ? "0" : counters)}, {"failed", as_count(v.failed).shown}}, *figure};
}

}

std::vector<Generator> section_generators()
{
    return {{"cloths-for-floor", {"room", "width", "reach"}, names_of(strip_mistakes), cloths_for_floor},
            {"verification-cloths", {"room", "area", "sills", "counters", "failed"}, names_of(verification_mistakes), verification_cloths}};
}

}
