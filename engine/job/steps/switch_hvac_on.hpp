#pragma once

#include "core/fields.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct SwitchHvacOn {
    static constexpr std::string_view name = "switch-hvac-on";
    static constexpr std::string_view title = "Switch the air handling on";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
