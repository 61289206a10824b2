#include "job/walls.hpp"

#include "core/insist.hpp"

namespace flapdoor::job {

plan::Rect floor_of(const Zone& zone) { return {zone.west, zone.south, zone.width, zone.depth}; }

plan::Rect wall_strip(const Zone& zone, WallSide wall, Length from, Length width, Length into, Length beyond)
{
    const plan::Rect floor = floor_of(zone);
    switch (wall) {
        case WallSide::south: return {floor.west + from, floor.south - beyond, width, into + beyond};
        case WallSide::north: return {floor.west + from, floor.north() - into, width, into + beyond};
        case WallSide::west: return {floor.west - beyond, floor.south + from, into + beyond, width};
        case WallSide::east: return {floor.east() - into, floor.south + from, into + beyond, width};
    }
    insist(false, "a wall is one of four");
    return {};
}

Length length_of(const Zone& zone, WallSide wall)
{
    return wall == WallSide::south || wall == WallSide::north ? zone.width : zone.depth;
}

}
