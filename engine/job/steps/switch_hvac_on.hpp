#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct SwitchHvacOn {
    static constexpr std::string_view name = "switch-hvac-on";
    static constexpr std::string_view title = "Switch the air handling on";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
