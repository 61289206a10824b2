#include "quiz/making/generator.hpp"

#include "job/walls.hpp"
#include "rules/sheeting.hpp"
#include "rules/things.hpp"
#include "text/show.hpp"

namespace flapdoor::quiz {
namespace {

/// A worked part as a line in its wall, and the floor it is in.
struct Part {
    plan::Rect worked, floor;
    bool is_along_x = false;    ///< the wall runs west to east

    Length width() const { return is_along_x ? worked.width : worked.depth; }
    Length before() const { return is_along_x ? worked.west - floor.west : worked.south - floor.south; }
    Length behind() const { return is_along_x ? floor.east() - worked.east() : floor.north() - worked.north(); }
    Length depth() const { return is_along_x ? floor.depth : floor.width; }
    Length along(const plan::Rect& sheet) const { return is_along_x ? sheet.width : sheet.depth; }
    plan::Rect within(Length reach) const { return plan::intersection(plan::grown(worked, reach), floor); }
};

constexpr Mistake<Part> area_mistakes[] = {
    {"only-in-front", [](const Part& p) { return (p.width() * std::min(rules::least_reach, p.depth())).si; }},
    {"cleaning-margin", [](const Part& p) { return p.within(2.0_ft).area().si; }},
    {"outdoor-figure", [](const Part& p) { return p.within(10.0_ft).area().si; }},
    {"through-the-walls", [](const Part& p) { return plan::grown(p.worked, rules::least_reach).area().si; }},
};

constexpr Mistake<Part> along_mistakes[] = {
    {"only-in-front", [](const Part& p) { return p.width().si; }},
    {"one-side-only", [](const Part& p) { return std::min(p.width() + rules::least_reach, p.width() + p.behind()).si; }},
    {"through-the-walls", [](const Part& p) { return (p.width() + 2.0 * rules::least_reach).si; }},
    {"cleaning-margin", [](const Part& p) { return p.along(p.within(2.0_ft)).si; }},
    {"outdoor-figure", [](const Part& p) { return p.along(p.within(10.0_ft)).si; }},
};

struct Asked {
    Part part;
    std::map<std::string, Phrase> blanks;
};

/// A worked part of the work room that stands in a wall, and its figures.
std::optional<Asked> some_part(const Setting& setting, std::string_view purpose)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    if (room == nullptr) return std::nullopt;
    std::vector<const job::Component*> parts;
    for (const job::Component& part : setting.scenario.components)
        if (part.zone == room->id && part.kind != job::ComponentKindOf::ceiling && (!part.opening.is_empty() || part.width.si > 0.0)) parts.push_back(&part);
    if (parts.empty()) return std::nullopt;
    Dice dice = setting.dice(purpose);
    const job::Component& chosen = *dice.one_of(parts);
    const auto place = place_of_thing(setting.scenario, chosen.id.name);
    if (!place) return std::nullopt;
    const Part part{*place, job::floor_of(*room), place->depth.si == 0.0};
    const auto length = [](Length l) { return phrase(text::show_short(l)); };
    return Asked{part, {{"part", phrase(chosen.title)}, {"room", phrase(room->title)}, {"width", length(part.width())}, {"before", length(part.before())},
                        {"behind", length(part.behind())}, {"depth", length(part.depth())}}};
}

std::optional<Made> sheeting_area(const Setting& setting)
{
    const auto asked = some_part(setting, "sheeting-area");
    if (!asked) return std::nullopt;
    const Part& part = asked->part;
    const auto figure = made_figure(part, rules::least_sheeting(part.worked, part.floor).area().si, area_mistakes, as_area, 0.01);
    if (!figure) return std::nullopt;
    return Made{asked->blanks, *figure};
}

std::optional<Made> sheeting_along_wall(const Setting& setting)
{
    const auto asked = some_part(setting, "sheeting-along-wall");
    if (!asked) return std::nullopt;
    const Part& part = asked->part;
    const auto figure = made_figure(part, part.along(rules::least_sheeting(part.worked, part.floor)).si, along_mistakes, as_length, 0.01);
    if (!figure) return std::nullopt;
    return Made{asked->blanks, *figure};
}

const std::vector<std::string_view> part_blanks{"part", "room", "width", "before", "behind", "depth"};

}

std::vector<Generator> sheeting_generators()
{
    return {{"sheeting-area", part_blanks, names_of(area_mistakes), sheeting_area}, {"sheeting-along-wall", part_blanks, names_of(along_mistakes), sheeting_along_wall}};
}

}
