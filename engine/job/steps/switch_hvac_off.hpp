#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// The blower stands still from here on.
struct SwitchHvacOff {
    static constexpr std::string_view name = "switch-hvac-off";
    static constexpr std::string_view title = "Switch the air handling off";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
