#pragma once

#include "air/room_flow.hpp"
#include "dust/step_table.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace flapdoor::bench {

inline constexpr std::uint64_t seed = 7;

/// A furnished room with a return register in the east and air let in along the west wall.
struct FurnishedRoom {
    dust::CloudRoom room;
    air::RoomPlan plan;
    std::vector<double> sources;

    explicit FurnishedRoom(Length cell);
};

/// That room with fine dust that stays in the air, so that every parcel makes nearly every step.
struct CloudScene {
    dust::StepTable table;
    dust::Cloud cloud;

    explicit CloudScene(std::size_t parcels);
};

}
