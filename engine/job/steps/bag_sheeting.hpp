#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct BagSheeting {
    static constexpr std::string_view name = "bag-sheeting";
    static constexpr std::string_view title = "Bag the folded sheeting";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "heavy-duty bags";

    BagId bag;
    SupplyId kind;

    static void fields(auto& self, auto&& visit)
    {
        visit("bag", self.bag, required);
        visit("kind", self.kind, required, About{"which bags"});
    }
};

}
