#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"
#include "job/steps/vacuum_walls.hpp"

#include <string_view>

namespace flapdoor::job {

struct WipeWalls {
    static constexpr std::string_view name = "wipe-walls";
    static constexpr std::string_view title = "Wipe the walls";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 75.0_s;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "damp cloths";

    SupplyId cloth;
    WallOrder order = WallOrder::top_down;

    static void fields(auto& self, auto&& visit)
    {
        visit("cloth", self.cloth, required);
        visit("order", self.order);
    }
};

}
