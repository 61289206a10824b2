#include "window/run/moment.hpp"

#include "site/place.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double shoulder = 0.27;     // m; people are drawn no nearer to a wall
constexpr double elbow_room = 0.74;   // m between two people who would stand on each other
constexpr Time longest_walk = 90.0_s; // pictures further apart tell nothing about the way between

/// Where one passes from a zone into another, when a door joins them.
const job::Opening* door_between(const job::Scenario& scenario, const job::Zone& a, const job::Zone& b)
{
    for (const job::Opening& opening : scenario.openings)
        if ((opening.zone == a.id && opening.leads_to == b.id) || (opening.zone == b.id && opening.leads_to == a.id)) return &opening;
    return nullptr;
}

PaperPoint kept_inside(PaperPoint p, const job::Zone& zone)
{
    const PaperBox floor = paper(site::footprint(zone));
    const double dx = std::min(shoulder, floor.width() * 0.5);
    const double dy = std::min(shoulder, floor.height() * 0.5);
    return {std::clamp(p.x, floor.low.x + dx, floor.high.x - dx), std::clamp(p.y, floor.low.y + dy, floor.high.y - dy)};
}

PaperPoint between(const Story& story, const drill::PersonShot& from, const drill::PersonShot& to, double share)
{
    const auto& zones = story.film.zones;
    const PaperPoint a = kept_inside(paper(from.at), zones[from.zone]);
    const PaperPoint b = kept_inside(paper(to.at), zones[to.zone]);
    if (from.zone == to.zone) return a + (b - a) * share;
    const job::Opening* door = door_between(story.inputs.scenario, zones[from.zone], zones[to.zone]);
    if (door == nullptr) return share < 0.5 ? a : b;
    const PaperPoint middle = paper(site::middle(*find_by_id(story.inputs.scenario.zones, door->zone), *door));
    const double first = distance(a, middle);
    const double whole = std::max(first + distance(middle, b), 1e-6);
    const double way = share * whole;
    return way < first ? a + (middle - a) * (way / std::max(first, 1e-6))
                       : middle + (b - middle) * ((way - first) / std::max(whole - first, 1e-6));
}

/// Two in one place are drawn beside each other.
void spread(const Story& story, Moment& moment)
{
    std::vector<Walker>& crew = moment.crew;
    const auto zone_of = [&](std::size_t person) -> const job::Zone& { return story.film.zones[moment.now->people[person].zone]; };
    for (std::size_t i = 0; i < crew.size(); ++i)
        for (std::size_t k = i + 1; k < crew.size(); ++k) {
            const double apart = distance(crew[i].at, crew[k].at);
            if (apart >= elbow_room) continue;
            const PaperPoint way = apart > 1e-3 ? along(crew[i].at, crew[k].at) : PaperPoint{0.0, -1.0};
            const PaperPoint push = way * ((elbow_room - apart) * 0.5);
            crew[i].at = kept_inside(crew[i].at - push, zone_of(i));
            crew[k].at = kept_inside(crew[k].at + push, zone_of(k));
        }
}

}

PaperPoint paper(plan::Point p) { return {p.x.si, p.y.si}; }
PaperBox paper(const plan::Rect& rect) { return {{rect.west.si, rect.south.si}, {rect.east().si, rect.north().si}}; }

Moment moment_of(const Story& story, Time at, bool glides)
{
    const auto& frames = story.film.frames;
    Moment moment;
    moment.at = at;
    moment.now = &story.film.at(at);
    moment.frame = static_cast<std::size_t>(moment.now - frames.data());
    moment.card = story.card_at(at);
    const drill::Frame& next = frames[std::min(moment.frame + 1, frames.size() - 1)];
    const double gap = (next.at - moment.now->at).si;
    const bool walks = glides && gap > 0.0 && gap < longest_walk.si && at > moment.now->at;
    const double share = walks ? std::clamp((at - moment.now->at).si / gap, 0.0, 1.0) : 0.0;
    for (std::size_t p = 0; p < moment.now->people.size(); ++p) {
        Walker walker;
        walker.at = between(story, moment.now->people[p], next.people[p], share);
        walker.facing = story.facing[moment.frame][p];
        walker.has_gear = moment.now->people[p].has_gear;
        if (moment.card < story.log.entries.size()) {
            const job::LogEntry& card = story.log.entries[moment.card];
            const auto& by = card.by;
            walker.is_busy = at <= card.end && std::find(by.begin(), by.end(), story.inputs.scenario.crew[p].id) != by.end();
        }
        moment.crew.push_back(walker);
    }
    spread(story, moment);
    return moment;
}

}
