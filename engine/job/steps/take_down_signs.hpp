#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct TakeDownSigns {
    static constexpr std::string_view name = "take-down-signs";
    static constexpr std::string_view title = "Take down barrier and signs";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    OpeningId at;

    static void fields(auto& self, auto&& visit)
    {
        visit("at", self.at, required);
    }
};

}
