#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct VacuumBag {
    static constexpr std::string_view name = "vacuum-bag";
    static constexpr std::string_view title = "Vacuum the outside of a bag";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "HEPA vacuum";

    BagId bag;
    SupplyId vacuum;

    static void fields(auto& self, auto&& visit)
    {
        visit("bag", self.bag, required);
        visit("vacuum", self.vacuum, required);
    }
};

}
