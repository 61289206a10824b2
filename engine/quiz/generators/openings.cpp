#include "quiz/making/generator.hpp"

#include "job/walls.hpp"
#include "rules/things.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

using rules::Each;

bool is_in(const std::vector<std::string>& ids, const std::string& id) { return std::find(ids.begin(), ids.end(), id) != ids.end(); }

/// Openings of the work room by what is done to them.
struct Openings {
    std::vector<std::string> registers, unused_doors, entrances, windows;

    explicit Openings(const job::Scenario& scenario)
        : registers(rules::things(Each::reg, scenario, {})), unused_doors(rules::things(Each::unused_door, scenario, {})),
          entrances(rules::things(Each::entrance, scenario, {})), windows(rules::things(Each::window, scenario, {}))
    {
    }
    double sealed() const { return static_cast<double>(registers.size() + unused_doors.size()); }
};

constexpr std::string_view windows_sheeted = "windows-are-sheeted-too", entrance_sealed = "entrance-is-sealed-shut", beyond = "beyond-the-work-area";

std::optional<Made> openings_to_seal(const Setting& setting)
{
    const Openings openings(setting.scenario);
    MadeChoice choice;
    for (const job::Opening& opening : setting.scenario.openings) {
        const std::string& id = opening.id.name;
        const bool is_right = is_in(openings.registers, id) || is_in(openings.unused_doors, id);
        const std::string_view mistake = is_right ? std::string_view() : is_in(openings.windows, id) ? windows_sheeted : is_in(openings.entrances, id) ? entrance_sealed : beyond;
        choice.options.push_back({id, phrase(opening.title), is_right, std::string(mistake)});
    }
    if (openings.sealed() == 0.0 || choice.options.size() < 3 || choice.options.size() > 12) return std::nullopt;
    return Made{{{"room", phrase(rules::work_room(setting.scenario)->title)}}, std::move(choice)};
}

constexpr Mistake<Openings> act_mistakes[] = {
    {"covering-alone", [](const Openings& o) { return o.sealed(); }},
    {"doors-forgotten", [](const Openings& o) { return 2.0 * static_cast<double>(o.registers.size()); }},
    {"registers-forgotten", [](const Openings& o) { return 2.0 * static_cast<double>(o.unused_doors.size()); }},
    {"windows-are-sheeted-too", [](const Openings& o) { return 2.0 * (o.sealed() + static_cast<double>(o.windows.size())); }},
    {"entrance-is-sealed-shut", [](const Openings& o) { return 2.0 * (o.sealed() + static_cast<double>(o.entrances.size())); }},
};

std::optional<Made> acts_of_sealing(const Setting& setting)
{
    const Openings openings(setting.scenario);
    if (openings.sealed() == 0.0) return std::nullopt;
    const auto figure = made_figure(openings, 2.0 * openings.sealed(), act_mistakes, as_count);
    if (!figure) return std::nullopt;
    const auto count = [](const std::vector<std::string>& ids) { return as_count(static_cast<double>(ids.size())).shown; };
    return Made{{{"room", phrase(rules::work_room(setting.scenario)->title)}, {"registers", count(openings.registers)}, {"doors", count(openings.unused_doors)},
                 {"windows", count(openings.windows)}}, *figure};
}

std::shared_ptr<const job::Scenario> site_of(const Setting& setting)
{
    const auto found = setting.workshop.find()(setting.drill);
    return found ? *found : nullptr;
}

Region region_of(const std::string& id, std::string_view title, const plan::Rect& place, bool is_right, std::string_view mistake)
{
    Region region;
    region.id.text = id;
    region.text = phrase(title);
    region.at = Across{place.west, place.south};
    region.size = Across{place.width, place.depth};
    region.place = place;
    region.is_right = is_right;
    region.misconception = mistake;
    return region;
}

std::optional<Made> flap_door_place(const Setting& setting)
{
    const Openings openings(setting.scenario);
    PointAtPlan asked;
    asked.site = site_of(setting);
    asked.scenario.text = setting.drill;
    if (!asked.site || openings.entrances.size() != 1) return std::nullopt;
    for (const job::Opening& opening : asked.site->openings) {
        const std::string& id = opening.id.name;
        const bool is_entrance = is_in(openings.entrances, id);
        const bool is_window = opening.kind == job::OpeningKindOf::window;
        if (!is_entrance && opening.kind != job::OpeningKindOf::door && !is_window) continue;
        const std::string_view mistake = is_entrance ? std::string_view() : is_window ? "window-for-a-door" : is_in(openings.unused_doors, id) ? "every-door-gets-a-flap" : beyond;
        if (const auto place = place_of_thing(*asked.site, id)) asked.regions.push_back(region_of(id, opening.title, *place, is_entrance, mistake));
    }
    if (asked.regions.size() < 3) return std::nullopt;
    return Made{{{"room", phrase(rules::work_room(setting.scenario)->title)}}, std::move(asked)};
}

/// Floor before and behind a door, seen from the work room.
struct DoorSides {
    plan::Rect inside, outside;
};

DoorSides sides_of(const job::Scenario& scenario, const job::Opening& door, Length deep)
{
    const job::Zone& owner = *job::find_by_id(scenario.zones, door.zone);
    const plan::Rect own = job::wall_strip(owner, door.wall, door.from, door.width, deep);
    const plan::Rect other = job::wall_strip(owner, door.wall, door.from, door.width, {}, deep);
    const job::Zone* room = rules::work_room(scenario);
    return room->id == door.zone ? DoorSides{own, other} : DoorSides{other, own};
}

std::optional<Made> tack_pad_place(const Setting& setting)
{
    const Openings openings(setting.scenario);
    PointAtPlan asked;
    asked.site = site_of(setting);
    asked.scenario.text = setting.drill;
    if (!asked.site || openings.entrances.size() != 1) return std::nullopt;
    const job::Opening* entrance = job::find_by_id(asked.site->openings, job::OpeningId{openings.entrances.front()});
    const DoorSides sides = sides_of(*asked.site, *entrance, 2.5_ft);
    using text::to_say;
    asked.regions.push_back(region_of("outside", to_say("In front of the entrance, outside the work room"), sides.outside, true, {}));
    asked.regions.push_back(region_of("inside", to_say("In front of the entrance, inside the work room"), sides.inside, false, "pad-on-the-dirty-side"));
    const plan::Rect floor = job::floor_of(*rules::work_room(*asked.site));
    asked.regions.push_back(region_of("middle", to_say("In the middle of the work room"), {floor.center().x - 1.5_ft, floor.center().y - 1.5_ft, 3.0_ft, 3.0_ft}, false, "pad-at-the-work"));
    for (const std::string& id : openings.unused_doors) {
        const job::Opening* door = job::find_by_id(asked.site->openings, job::OpeningId{id});
        Region region = region_of(id, to_say("In front of this door: {door}"), sides_of(*asked.site, *door, 2.0_ft).inside, false, "pad-at-another-door");
        region.text.blanks["door"] = phrase(door->title);
        asked.regions.push_back(std::move(region));
    }
    for (Region& region : asked.regions) region.tolerance = {};
    return Made{{{"room", phrase(rules::work_room(*asked.site)->title)}, {"door", phrase(entrance->title)}}, std::move(asked)};
}

}

std::vector<Generator> opening_generators()
{
    return {{"openings-to-seal", {"room"}, {windows_sheeted, entrance_sealed, beyond}, openings_to_seal},
            {"acts-of-sealing", {"room", "registers", "doors", "windows"}, names_of(act_mistakes), acts_of_sealing},
            {"flap-door-place", {"room"}, {"window-for-a-door", "every-door-gets-a-flap", beyond}, flap_door_place},
            {"tack-pad-place", {"room", "door"}, {"pad-on-the-dirty-side", "pad-at-the-work", "pad-at-another-door"}, tack_pad_place}};
}

}
