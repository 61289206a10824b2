#include "rules/things.hpp"

#include "rules/scope.hpp"

#include <algorithm>

namespace flapdoor::rules {
namespace {

using job::Scenario;

bool is_in_work_room(const job::ZoneId& zone, const Scenario& scenario)
{
    const job::Zone* room = work_room(scenario);
    return room && room->id == zone;
}

bool is_register(const job::Opening& opening) { return job::is_register(opening.kind); }

template <class Wanted>
std::vector<std::string> openings(const Scenario& scenario, Wanted is_wanted)
{
    std::vector<std::string> ids;
    for (const job::Opening& opening : scenario.openings) {
        const bool is_here = is_in_work_room(opening.zone, scenario) || (!opening.leads_to.is_empty() && is_in_work_room(opening.leads_to, scenario));
        if (is_here && is_wanted(opening)) ids.push_back(opening.id.name);
    }
    return ids;
}

std::vector<std::string> doors(const Scenario& scenario)
{
    return openings(scenario, [](const job::Opening& o) { return o.kind == job::OpeningKindOf::door; });
}

bool contains(const std::vector<std::string>& list, const std::string& name) { return std::find(list.begin(), list.end(), name) != list.end(); }

/// Doors that cards pass through or hang a flap in; when there are none, the door to the passage, else the first door.
std::vector<std::string> entrances(const Scenario& scenario, const job::RunLog& log)
{
    const std::vector<std::string> all = doors(scenario);
    std::vector<std::string> used;
    for (const std::string& door : all)
        for (const job::LogEntry& entry : log.entries) {
            const bool passes = entry.step == "hang-flap" || entry.step == "enter-work-area" || entry.step == "leave-work-area" ||
                                entry.step == "carry-out" || entry.step == "fetch-item";
            if (passes && job::parameter(entry, "opening") == door && !contains(used, door)) used.push_back(door);
        }
    if (!used.empty() || all.empty()) return used;
    for (const job::Opening& opening : scenario.openings) {
        if (!contains(all, opening.id.name)) continue;
        const job::ZoneId& beyond = is_in_work_room(opening.zone, scenario) ? opening.leads_to : opening.zone;
        const job::Zone* zone = job::find_by_id(scenario.zones, beyond);
        if (zone && zone->role == job::ZoneRole::passage) return {opening.id.name};
    }
    return {all.front()};
}

std::vector<std::string> unused_doors(const Scenario& scenario, const job::RunLog& log)
{
    const std::vector<std::string> used = entrances(scenario, log);
    std::vector<std::string> others;
    for (const std::string& door : doors(scenario))
        if (!contains(used, door)) others.push_back(door);
    return others;
}

std::vector<std::string> sills(const Scenario& scenario)
{
    const auto windows = openings(scenario, [](const job::Opening& o) { return o.kind == job::OpeningKindOf::window; });
    std::vector<std::string> ids;
    for (const job::Sill& sill : scenario.sills)
        if (contains(windows, sill.window.name)) ids.push_back(sill.id.name);
    return ids;
}

template <class List>
std::vector<std::string> in_work_room(const List& list, const Scenario& scenario)
{
    std::vector<std::string> ids;
    for (const auto& thing : list)
        if (is_in_work_room(thing.zone, scenario)) ids.push_back(thing.id.name);
    return ids;
}

std::vector<std::string> crew(const Scenario& scenario, bool with_certified)
{
    std::vector<std::string> ids;
    for (const job::Person& person : scenario.crew)
        if (with_certified || person.role != job::Role::certified_renovator) ids.push_back(person.id.name);
    return ids;
}

std::vector<std::string> bags(const job::RunLog& log)
{
    std::vector<std::string> ids;
    for (const job::LogEntry& entry : log.entries) {
        const std::string bag = job::parameter(entry, "bag");
        if (!bag.empty() && entry.outcome == job::Outcome::done && !contains(ids, bag)) ids.push_back(bag);
    }
    return ids;
}

std::vector<std::string> items(const job::RunLog& log)
{
    std::vector<std::string> ids;
    for (const job::LogEntry& entry : log.entries)
        for (const job::Measure& measure : entry.measured)
            if ((measure.name == "result" || measure.name == "waited") && !contains(ids, measure.object)) ids.push_back(measure.object);
    return ids;
}

template <class List>
const std::string* title_in(const List& list, const std::string& id)
{
    for (const auto& thing : list)
        if (thing.id.name == id) return &thing.title;
    return nullptr;
}

const job::Zone* floor_of(const Scenario& scenario) { return work_room(scenario); }

bool has_carpet(const Scenario& s) { return (floor_of(s) && floor_of(s)->floor == job::FloorKind::carpet) || !in_work_room(s.carpets, s).empty(); }
bool has_hard_floor(const Scenario& s) { return floor_of(s) && floor_of(s)->floor != job::FloorKind::carpet; }
bool is_covered_housing(const Scenario& s) { return s.building.built < 1978 && s.building.housing != job::HousingKind::other; }
bool has_counters(const Scenario& s) { return !in_work_room(s.counters, s).empty(); }
bool has_crew(const Scenario& s) { return s.crew.size() > 1; }
bool has_doors(const Scenario& s) { return !doors(s).empty(); }
bool has_forced_air(const Scenario& s)
{
    const auto& air = s.air_handling;
    return air.return_flow.si > 0.0 || air.supply_flow.si > 0.0 || air.house_flow.si > 0.0;
}
bool has_hard_objects(const Scenario& s)
{
    return std::any_of(s.objects.begin(), s.objects.end(), [&](const job::Object& o) { return is_in_work_room(o.zone, s) && !o.is_soft; });
}
bool has_objects(const Scenario& s) { return !in_work_room(s.objects, s).empty(); }
bool has_registers(const Scenario& s) { return !openings(s, is_register).empty(); }
bool has_sills(const Scenario& s) { return !sills(s).empty(); }
bool has_to_wipe(const Scenario& s) { return has_sills(s) || has_counters(s) || has_hard_floor(s); }
bool has_workers(const Scenario& s) { return !crew(s, false).empty(); }
bool has_windows(const Scenario& s)
{
    return !openings(s, [](const job::Opening& o) { return o.kind == job::OpeningKindOf::window; }).empty();
}
bool has_young_child(const Scenario& s) { return s.building.has_young_child; }
bool is_emergency(const Scenario& s) { return s.is_emergency; }
bool is_minor_work(const Scenario& s) { return scope_of(job_scope(s)) == Scope::minor; }
bool is_free_of_lead(const Scenario& s)
{
    std::vector<PaintTest> tests;
    for (const job::Component& component : s.components) tests.push_back({Tester::certified_renovator, true, component.lead.si / (1.0_mgpcm2).si, 0.0});
    return exempts(tests);
}
/// What assisted housing leaves alone: 24 CFR 35.1350(d).
bool is_tiny_work(const Scenario& s)
{
    JobScope job = job_scope(s);
    job.is_assisted_housing = true;
    return !asks_for_safe_practices(job);
}
bool reads_spanish(const Scenario& s) { return s.building.occupants_read == job::Language::spanish; }

constexpr std::array all_facts{
    Fact{"at-most-2-sq-ft", is_tiny_work}, Fact{"covered-housing", is_covered_housing}, Fact{"emergency", is_emergency}, Fact{"has-carpet", has_carpet}, Fact{"has-counters", has_counters}, Fact{"has-crew", has_crew},
    Fact{"has-doors", has_doors}, Fact{"has-forced-air", has_forced_air}, Fact{"has-hard-floor", has_hard_floor}, Fact{"has-hard-objects", has_hard_objects},
    Fact{"has-objects", has_objects}, Fact{"has-registers", has_registers}, Fact{"has-sills", has_sills}, Fact{"has-surfaces-to-verify", has_to_wipe},
    Fact{"has-windows", has_windows}, Fact{"has-workers", has_workers}, Fact{"has-young-child", has_young_child},
    Fact{"minor-work", is_minor_work}, Fact{"no-lead-paint", is_free_of_lead}, Fact{"reads-spanish", reads_spanish},
};

}

std::vector<std::string> things(Each each, const Scenario& scenario, const job::RunLog& log)
{
    switch (each) {
    case Each::reg: return openings(scenario, is_register);
    case Each::window: return openings(scenario, [](const job::Opening& o) { return o.kind == job::OpeningKindOf::window; });
    case Each::entrance: return entrances(scenario, log);
    case Each::unused_door: return unused_doors(scenario, log);
    case Each::door: return doors(scenario);
    case Each::opening: return openings(scenario, [](const job::Opening&) { return true; });
    case Each::object: return in_work_room(scenario.objects, scenario);
    case Each::sill: return sills(scenario);
    case Each::counter: return in_work_room(scenario.counters, scenario);
    case Each::component: return in_work_room(scenario.components, scenario);
    case Each::person: return crew(scenario, true);
    case Each::worker: return crew(scenario, false);
    case Each::bag: return bags(log);
    case Each::item: return items(log);
    }
    return {};
}

ThingKind thing_kind(Each each)
{
    switch (each) {
    case Each::reg:
    case Each::window:
    case Each::entrance:
    case Each::unused_door:
    case Each::door:
    case Each::opening: return ThingKind::opening;
    case Each::object: return ThingKind::object;
    case Each::sill: return ThingKind::sill;
    case Each::counter: return ThingKind::counter;
    case Each::component: return ThingKind::component;
    case Each::person:
    case Each::worker: return ThingKind::person;
    case Each::bag: return ThingKind::bag;
    case Each::item: return ThingKind::none;
    }
    return ThingKind::none;
}

std::string title_of_thing(const std::string& id, const Scenario& scenario)
{
    const std::string* title = nullptr;
    const auto look_in = [&](const auto& list) {
        if (!title) title = title_in(list, id);
    };
    look_in(scenario.openings);
    look_in(scenario.objects);
    look_in(scenario.sills);
    look_in(scenario.counters);
    look_in(scenario.components);
    look_in(scenario.crew);
    look_in(scenario.supplies);
    return title && !title->empty() ? *title : id;
}

std::span<const Fact> facts() { return all_facts; }

const Fact* find_fact(std::string_view name)
{
    const auto found = std::find_if(all_facts.begin(), all_facts.end(), [&](const Fact& fact) { return fact.name == name; });
    return found == all_facts.end() ? nullptr : &*found;
}

const job::Zone* work_room(const Scenario& scenario)
{
    for (const job::Zone& zone : scenario.zones)
        if (zone.role == job::ZoneRole::work_room) return &zone;
    return nullptr;
}

}
