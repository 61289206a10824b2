#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct TakeDownCovers {
    static constexpr std::string_view name = "take-down-covers";
    static constexpr std::string_view title = "Take covers off registers and doors";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 6.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
