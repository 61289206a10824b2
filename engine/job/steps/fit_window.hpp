#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Sets and fastens the replacement unit; no paint is disturbed.
struct FitWindow {
    static constexpr std::string_view name = "fit-window";
    static constexpr std::string_view title = "Set the new window";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 25.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
    }
};

}
