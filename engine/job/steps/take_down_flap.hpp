#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct TakeDownFlap {
    static constexpr std::string_view name = "take-down-flap";
    static constexpr std::string_view title = "Take the flap door down";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 6.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
    }
};

}
