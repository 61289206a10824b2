#pragma once

#include "core/quantity.hpp"
#include "plan/rect.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace flapdoor::mechanics {

/// A paint chip or splinter that lies loose on the floor.
struct LooseChip {
    plan::Point at;
    Length radius = 4.0_mm;
};

/// A full waste bag on the floor, pulled by its neck.
struct DraggedBag {
    plan::Point at;                 ///< its middle
    Length width = 0.40_m;
    Mass mass = 10.0_kg;
    Length reach = 0.45_m;          ///< hand to the bag's middle, neck stretched
};

/// A floor seen from above, with walls around it.
struct FloorScene {
    plan::Rect floor;
    std::vector<plan::Rect> obstacles;      ///< furniture that nobody moves
    std::vector<LooseChip> chips;
    std::optional<DraggedBag> bag;
};

enum class FloorContactKind {
    foot_down,      ///< a sole came down at `to`; `thing`: 0 left, 1 right
    chip_kicked,    ///< chip `thing` slid from `from` to `to`
    bag_scraped,    ///< the bag's middle slid from `from` to `to`
    bag_bumped      ///< the bag, at `to`, ran against obstacle `thing` (walls come after the obstacles: south, east, north, west)
};

struct FloorContact {
    Time at{};                      ///< since setting out, to 1 ms
    FloorContactKind kind{};
    std::size_t thing = 0;
    plan::Point from, to;           ///< to 1 mm

    friend bool operator==(const FloorContact&, const FloorContact&) = default;
};

/// Somebody walks along a path. Feet swing over the floor and skim it only as they lift off and come down: there they push
/// chips before them; a chip under a sole that comes down stays. Chips and the bag slide with dry friction and stop at walls
/// and furniture; the bag follows on its neck. Stride, gait and friction are judgment.
/// @param path  at least one point; must lie on free floor
/// @param pace  0.3 to 2 m/s; insists
/// @return      in order of time, at one time by kind, then by thing
std::vector<FloorContact> walk_over(const FloorScene& scene, const std::vector<plan::Point>& path, Speed pace = 1.2_mps);

}
