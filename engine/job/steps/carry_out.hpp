#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Through the entrance to the waste store.
struct CarryOut {
    static constexpr std::string_view name = "carry-out";
    static constexpr std::string_view title = "Carry waste out";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    BagId bag;
    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("bag", self.bag, required);
        visit("opening", self.opening, required);
    }
};

}
