#pragma once

#include "job/building.hpp"
#include "job/contents.hpp"

#include <string>
#include <vector>

namespace flapdoor::job {

/// How much a drill asks of who plays it.
enum class Level { first, usual, hard };

/// A job as the trainee meets it: the place, its parts, the work, the crew, the supplies.
struct Scenario {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string id;
    std::string title;
    std::string job;            ///< the work in one or two sentences
    Building building;
    std::vector<Zone> zones;
    std::vector<Carpet> carpets;
    std::vector<Opening> openings;
    std::vector<Object> objects;
    std::vector<Sill> sills;
    std::vector<Counter> counters;
    std::vector<Component> components;
    std::vector<Person> crew;
    std::vector<Supply> supplies;
    AirHandling air_handling;
    Time start = 8.0_h;         ///< time of day at which the crew arrives
    Time drying = 25.0_min;     ///< how long a wiped or mopped surface stays wet
    double light = 1.0;         ///< 1 = ordinary room light; below 1 dim
    int minutes = 0;            ///< about how long people take to play it; 0: not told
    Level level = Level::usual;
    bool is_emergency = false;  ///< a sudden event with danger or serious damage: much of the rule is excused

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("id", self.id, required);
        visit("title", self.title, required);
        visit("job", self.job, required, About{"the work in one or two sentences"});
        visit("start", self.start, Range{0.0_h, 23.0_h}, About{"time of day at which the crew arrives"});
        visit("drying", self.drying, Range{1.0_min, 12.0_h}, About{"how long a wiped or mopped surface stays wet"});
        visit("light", self.light, Range{0.05, 4.0}, About{"1 is ordinary room light"});
        visit("is-emergency", self.is_emergency, About{"a sudden event with danger or serious damage"});
        visit("minutes", self.minutes, Range{0, 600}, About{"about how long people take to play it"});
        visit("level", self.level, About{"how much it asks of who plays it"});
        visit("building", self.building, required);
        visit("air-handling", self.air_handling);
        visit("zone", self.zones, required);
        visit("carpet", self.carpets);
        visit("opening", self.openings);
        visit("object", self.objects);
        visit("sill", self.sills);
        visit("counter", self.counters);
        visit("component", self.components, required);
        visit("person", self.crew, required);
        visit("supply", self.supplies);
    }
};

/// The thing with that id, or null. Works for every list of a scenario.
template <class List, class IdOf>
auto* find_by_id(List& list, const IdOf& id)
{
    for (auto& thing : list)
        if (thing.id == id) return &thing;
    return static_cast<decltype(&list.front())>(nullptr);
}

}

namespace flapdoor::inline core {
template <> struct Words<job::Level> { static constexpr std::array<std::string_view, 3> words{"first", "usual", "hard"}; };
}
