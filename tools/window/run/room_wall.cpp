#include "window/run/room_wall.hpp"

#include "window/run/moment.hpp"
#include "window/run/openings.hpp"

#include "site/place.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr double on_the_wall = 0.05; // m: two zones that share a wall may be told apart by rounding

double dot(PaperPoint a, PaperPoint b) { return a.x * b.x + a.y * b.y; }

}

double RoomWall::across(PaperPoint p) const { return dot(p - left, along(left, right)); }
double RoomWall::off(PaperPoint p) const { return -dot(p - left, left_of(along(left, right))); }

RoomWall room_wall(const job::Scenario& scenario, job::WallSide side)
{
    const auto room = std::find_if(scenario.zones.begin(), scenario.zones.end(), [](const job::Zone& zone) { return zone.role == job::ZoneRole::work_room; });
    const job::Zone& zone = room == scenario.zones.end() ? scenario.zones.front() : *room;
    const PaperBox floor = paper(site::footprint(zone));
    const PaperPoint south_west = floor.low, north_east = floor.high;
    const PaperPoint south_east{floor.high.x, floor.low.y}, north_west{floor.low.x, floor.high.y};
    switch (side) {
        case job::WallSide::north: return {side, north_west, north_east, zone.ceiling.si};
        case job::WallSide::east: return {side, north_east, south_east, zone.ceiling.si};
        case job::WallSide::south: return {side, south_east, south_west, zone.ceiling.si};
        case job::WallSide::west: break;
    }
    return {side, south_west, north_west, zone.ceiling.si};
}

bool has_opening(const RoomWall& wall, const job::Scenario& scenario, const job::Opening& opening)
{
    const PlanOpening place = plan_opening(scenario, opening);
    const auto is_on = [&](PaperPoint p) {
        return std::abs(wall.off(p)) < on_the_wall && wall.across(p) > -on_the_wall && wall.across(p) < wall.width() + on_the_wall;
    };
    return is_on(place.from) && is_on(place.to);
}

std::string_view wall_title(job::WallSide side)
{
    constexpr std::array<std::string_view, 4> titles{text::to_say("South wall"), text::to_say("East wall"), text::to_say("North wall"), text::to_say("West wall")};
    return titles[static_cast<std::size_t>(side)];
}

std::string_view wall_word(job::WallSide side) { return word_of(side); }

}
