#include "job/files.hpp"

#include "job/places.hpp"
#include "job/walls.hpp"
#include "plan/rect.hpp"
#include "text/reading.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace flapdoor::job {

namespace {

/// Gathers what is wrong with the meaning of a scenario, each with its place in the file.
class ScenarioChecker {
public:
    ScenarioChecker(const Scenario& scenario, const text::Node& root) : scenario_(scenario), root_(root) {}

    Problems check()
    {
        unique(scenario_.zones, "zone");
        unique(scenario_.carpets, "carpet");
        unique(scenario_.openings, "opening");
        unique(scenario_.objects, "object");
        unique(scenario_.sills, "sill");
        unique(scenario_.counters, "counter");
        unique(scenario_.components, "component");
        unique(scenario_.crew, "person");
        unique(scenario_.supplies, "supply");
        unique_titles(scenario_.carpets, "carpet");
        unique_titles(scenario_.objects, "object");
        unique_titles(scenario_.sills, "sill");
        unique_titles(scenario_.counters, "counter");
        zones();
        carpets();
        openings();
        walls();
        things();
        sills();
        components();
        entrance();
        return std::move(problems_);
    }

private:
    static constexpr Length slack = 0.001_m;
    static constexpr Length thickest_wall = 1.0_ft;     // between a door and the zone it leads to

    /// Says nothing once there are enough of them.
    void problem(std::string_view list, std::size_t index, std::string_view key, std::string expected, std::string found)
    {
        if (problems_.size() < text::most_problems) problems_.push_back({place_of(root_, list, index, key), std::move(expected), std::move(found)});
    }

    template <class List>
    void unique(const List& things, std::string_view list)
    {
        std::set<std::string> names;
        for (std::size_t i = 0; i < things.size(); ++i)
            if (!names.insert(things[i].id.name).second) problem(list, i, "id", "an id that no other " + std::string(list) + " has", "`" + things[i].id.name + "` a second time");
    }

    /// Screens, and the surfaces of the site, tell things of one kind apart by their titles.
    template <class List>
    void unique_titles(const List& things, std::string_view list)
    {
        std::map<std::string, std::string> ids;     // of each title; a thing told twice is told once
        for (std::size_t i = 0; i < things.size(); ++i) {
            const auto [known, is_new] = ids.emplace(things[i].title, things[i].id.name);
            if (!is_new && known->second != things[i].id.name) problem(list, i, "title", "a title that no other " + std::string(list) + " has", "`" + things[i].title + "` a second time");
        }
    }

    /// The zone named there, or nothing and a problem.
    const Zone* zone_named(const ZoneId& id, std::string_view list, std::size_t index, std::string_view key)
    {
        if (const Zone* zone = find_by_id(scenario_.zones, id)) return zone;
        std::vector<std::string> known;
        for (const Zone& zone : scenario_.zones) known.push_back(zone.id.name);
        problem(list, index, key, "the id of a zone" + nearest_hint(id.name, known), "`" + id.name + "`");
        return nullptr;
    }

    void zones()
    {
        std::size_t work_rooms = 0;
        std::size_t one_too_many = 0;
        for (std::size_t i = 0; i < scenario_.zones.size(); ++i)
            if (scenario_.zones[i].role == ZoneRole::work_room && ++work_rooms == 2) one_too_many = i;
        if (work_rooms != 1) problem("zone", one_too_many, "role", "exactly one zone with role = \"work-room\"", std::to_string(work_rooms) + " of them");
        lie_apart(scenario_.zones, "zone", [](const Zone& zone) { return floor_of(zone); });
    }

    void carpets()
    {
        for (std::size_t i = 0; i < scenario_.carpets.size(); ++i) {
            const Carpet& carpet = scenario_.carpets[i];
            const Zone* zone = zone_named(carpet.zone, "carpet", i, "zone");
            if (zone == nullptr) continue;
            if (!floor_of(*zone).contains(area_of(carpet), slack)) problem("carpet", i, "west", "a place inside `" + zone->id.name + "`", "one that reaches beyond its walls");
            if (zone->floor == FloorKind::carpet) problem("carpet", i, "zone", "a zone whose floor is not carpet already", "`" + zone->id.name + "`");
        }
        lie_apart(scenario_.carpets, "carpet", area_of);
    }

    static plan::Rect area_of(const Carpet& carpet) { return {carpet.west, carpet.south, carpet.width, carpet.depth}; }

    template <class List, class Area>
    void lie_apart(const List& things, std::string_view list, Area area)
    {
        for (std::size_t i = 0; i < things.size(); ++i) {
            const plan::Rect here = plan::grown(area(things[i]), -slack);
            const auto under = std::find_if(things.begin(), things.begin() + static_cast<std::ptrdiff_t>(i), [&](const auto& other) { return plan::overlap(here, area(other)); });
            if (under != things.begin() + static_cast<std::ptrdiff_t>(i))
                problem(list, i, "id", std::string(list) + "s that do not overlap", "`" + things[i].id.name + "` over `" + under->id.name + "`");
        }
    }

    void openings()
    {
        for (std::size_t i = 0; i < scenario_.openings.size(); ++i) {
            const Opening& o = scenario_.openings[i];
            const Zone* zone = zone_named(o.zone, "opening", i, "zone");
            if (o.kind == OpeningKindOf::door) {
                if (o.leads_to.is_empty()) problem("opening", i, "leads-to", "the zone that a door leads to", "none");
                else if (o.leads_to == o.zone) problem("opening", i, "leads-to", "a zone other than the door's own", "`" + o.leads_to.name + "`");
                else zone_named(o.leads_to, "opening", i, "leads-to");
            }
            else if (!o.leads_to.is_empty()) problem("opening", i, "leads-to", "no leads-to: only doors lead to a zone", "`" + o.leads_to.name + "`");
            if (zone == nullptr) continue;
            const Length wall = length_of(*zone, o.wall);
            if (o.from + o.width > wall + slack)
                problem("opening", i, "from", "an opening inside its wall, which is " + text::show_short(wall) + " long", "one that ends at " + text::show_short(o.from + o.width));
            if (o.above_floor + o.height > zone->ceiling + slack)
                problem("opening", i, "height", "an opening below the ceiling at " + text::show_short(zone->ceiling), "one that ends at " + text::show_short(o.above_floor + o.height));
        }
    }

    /// What an opening opens to, and that no two openings take up the same piece of wall.
    void walls()
    {
        struct Hole {
            std::size_t index;
            bool is_across;
            plan::Rect strip;       // a hand's breadth of both sides of the wall
            Length low, high;
        };
        std::vector<Hole> holes;
        for (std::size_t i = 0; i < scenario_.openings.size(); ++i) {
            const Opening& o = scenario_.openings[i];
            const Zone* zone = find_by_id(scenario_.zones, o.zone);
            if (zone == nullptr || o.from + o.width > length_of(*zone, o.wall) + slack) continue;
            opens_to(i, wall_strip(*zone, o.wall, o.from, o.width, {}, thickest_wall));
            const Hole hole{i, o.wall == WallSide::south || o.wall == WallSide::north, plan::grown(wall_strip(*zone, o.wall, o.from, o.width, 0.1_m, 0.1_m), -slack), o.above_floor,
                            o.above_floor + o.height};
            const auto other = std::find_if(holes.begin(), holes.end(), [&](const Hole& h) {
                return h.is_across == hole.is_across && plan::overlap(h.strip, hole.strip) && h.low + slack < hole.high && hole.low + slack < h.high;
            });
            if (other != holes.end())
                problem("opening", i, "from", "a piece of wall that no other opening takes up", "`" + o.id.name + "` over `" + scenario_.openings[other->index].id.name + "`");
            holes.push_back(hole);
        }
    }

    /// A door has its zone behind it along its whole width, a window has none.
    void opens_to(std::size_t index, const plan::Rect& behind)
    {
        const Opening& o = scenario_.openings[index];
        if (o.kind == OpeningKindOf::door) {
            const Zone* there = find_by_id(scenario_.zones, o.leads_to);
            if (there == nullptr || o.leads_to == o.zone) return;
            const plan::Rect common = plan::intersection(behind, plan::grown(floor_of(*there), slack));
            const bool is_across = o.wall == WallSide::south || o.wall == WallSide::north;
            const bool is_there = plan::overlap(behind, floor_of(*there)) && (is_across ? common.width : common.depth) >= o.width - slack;
            if (!is_there) problem("opening", index, "leads-to", "a zone that lies behind the whole door", "`" + there->id.name + "`, which does not");
        }
        if (o.kind != OpeningKindOf::window) return;
        for (const Zone& zone : scenario_.zones)
            if (zone.id != o.zone && plan::overlap(plan::grown(behind, -slack), floor_of(zone))) return problem("opening", index, "wall", "a window in an outer wall", "one with `" + zone.id.name + "` behind it");
    }

    template <class List>
    void stand_in_zone(const List& things, std::string_view list)
    {
        for (std::size_t i = 0; i < things.size(); ++i) {
            const Zone* zone = zone_named(things[i].zone, list, i, "zone");
            if (zone == nullptr) continue;
            const plan::Rect where{things[i].west, things[i].south, things[i].width, things[i].depth};
            if (!floor_of(*zone).contains(where, slack)) problem(list, i, "west", "a place inside `" + zone->id.name + "`", "one that reaches beyond its walls");
            if (things[i].height > zone->ceiling) problem(list, i, "height", "at most the ceiling, " + text::show_short(zone->ceiling), text::show_short(things[i].height));
        }
    }

    void things()
    {
        stand_in_zone(scenario_.objects, "object");
        stand_in_zone(scenario_.counters, "counter");
    }

    void sills()
    {
        for (std::size_t i = 0; i < scenario_.sills.size(); ++i) {
            const Opening* window = find_by_id(scenario_.openings, scenario_.sills[i].window);
            if (window == nullptr || window->kind != OpeningKindOf::window)
                problem("sill", i, "window", "the id of a window", "`" + scenario_.sills[i].window.name + "`");
        }
    }

    void components()
    {
        for (std::size_t i = 0; i < scenario_.components.size(); ++i) {
            const Component& c = scenario_.components[i];
            const Zone* zone = zone_named(c.zone, "component", i, "zone");
            if (zone == nullptr) continue;
            if (!c.opening.is_empty()) {
                if (find_by_id(scenario_.openings, c.opening) == nullptr) problem("component", i, "opening", "the id of an opening", "`" + c.opening.name + "`");
                continue;
            }
            const Length wall = length_of(*zone, c.wall);
            if (c.kind != ComponentKindOf::ceiling && c.from + c.width > wall + slack)
                problem("component", i, "from", "a stretch of its wall, which is " + text::show_short(wall) + " long", "one that ends at " + text::show_short(c.from + c.width));
        }
    }

    void entrance()
    {
        // Where a door leads to no known zone, that is what is wrong.
        const auto is_lost = [&](const Opening& o) {
            return o.kind == OpeningKindOf::door && (find_by_id(scenario_.zones, o.zone) == nullptr || find_by_id(scenario_.zones, o.leads_to) == nullptr);
        };
        if (std::any_of(scenario_.openings.begin(), scenario_.openings.end(), is_lost)) return;
        const bool has_entrance = std::any_of(scenario_.openings.begin(), scenario_.openings.end(), [&](const Opening& o) {
            const Zone* here = find_by_id(scenario_.zones, o.zone);
            const Zone* there = find_by_id(scenario_.zones, o.leads_to);
            if (o.kind != OpeningKindOf::door || here == nullptr || there == nullptr) return false;
            const auto joins = [](const Zone& a, const Zone& b) { return a.role == ZoneRole::work_room && b.role == ZoneRole::passage; };
            return joins(*here, *there) || joins(*there, *here);
        });
        if (!has_entrance) problem("opening", 0, "kind", "a door between the work room and a zone with role = \"passage\"", "none");
    }

    const Scenario& scenario_;
    const text::Node& root_;
    Problems problems_;
};

}

Result<Scenario> read_scenario(std::string_view text, const std::string& file_name)
{
    Result<Scenario> scenario = text::read_document<Scenario>(text, file_name);
    if (!scenario) return scenario;
    const Result<text::Node> root = text::parse_document(text, file_name);
    Problems problems = ScenarioChecker(*scenario, *root).check();
    if (problems.empty()) return scenario;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

}
