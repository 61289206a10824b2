#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// By hand and scoop, into a bag.
struct BagDebris {
    static constexpr std::string_view name = "bag-debris";
    static constexpr std::string_view title = "Pick up chips and debris";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 15.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "heavy-duty bags";

    BagId bag;
    SupplyId kind;
    double fill = 0.6;

    static void fields(auto& self, auto&& visit)
    {
        visit("bag", self.bag, required);
        visit("kind", self.kind, required, About{"which bags"});
        visit("fill", self.fill, Range{0.05, 1.0}, About{"how full before it is closed"});
    }
};

}
