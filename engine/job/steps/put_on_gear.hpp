#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Each person of this card.
struct PutOnGear {
    static constexpr std::string_view name = "put-on-gear";
    static constexpr std::string_view title = "Put on protective gear";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    bool respirator = true;
    bool coverall = true;
    bool shoe_covers = true;
    bool gloves = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("respirator", self.respirator);
        visit("coverall", self.coverall);
        visit("shoe-covers", self.shoe_covers);
        visit("gloves", self.gloves);
    }
};

}
