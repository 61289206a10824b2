#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Closes what has come loose at an opening.
struct RepairContainment {
    static constexpr std::string_view name = "repair-containment";
    static constexpr std::string_view title = "Repair the containment";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 4.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "tape";

    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
    }
};

}
