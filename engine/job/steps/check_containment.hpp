#pragma once

#include "core/fields.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Tape, seams, reach and the way out, before the first cut.
struct CheckContainment {
    static constexpr std::string_view name = "check-containment";
    static constexpr std::string_view title = "Check the containment";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::certified;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
