#pragma once

#include "core/fields.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct AdmitOccupants {
    static constexpr std::string_view name = "admit-occupants";
    static constexpr std::string_view title = "Let the occupants back in";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
