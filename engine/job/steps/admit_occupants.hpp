#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct AdmitOccupants {
    static constexpr std::string_view name = "admit-occupants";
    static constexpr std::string_view title = "Let the occupants back in";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 1.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
