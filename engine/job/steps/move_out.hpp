#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Takes a movable object out of the work area.
struct MoveOut {
    static constexpr std::string_view name = "move-out";
    static constexpr std::string_view title = "Move furniture out";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 6.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    ObjectId object;

    static void fields(auto& self, auto&& visit)
    {
        visit("object", self.object, required);
    }
};

}
