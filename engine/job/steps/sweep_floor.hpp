#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct SweepFloor {
    static constexpr std::string_view name = "sweep-floor";
    static constexpr std::string_view title = "Sweep the floor dry";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 10.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "a broom";

    SupplyId broom;

    static void fields(auto& self, auto&& visit)
    {
        visit("broom", self.broom, required);
    }
};

}
