#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Tape, seams, reach and the way out, before the first cut.
struct CheckContainment {
    static constexpr std::string_view name = "check-containment";
    static constexpr std::string_view title = "Check the containment";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 8.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
