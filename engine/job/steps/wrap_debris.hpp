#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Old sashes and trim wrapped and taped.
struct WrapDebris {
    static constexpr std::string_view name = "wrap-debris";
    static constexpr std::string_view title = "Wrap large pieces";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 8.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "sheeting and tape";

    ComponentId component;
    SupplyId sheeting;
    BagId bag;

    static void fields(auto& self, auto&& visit)
    {
        visit("component", self.component, required);
        visit("sheeting", self.sheeting, required);
        visit("bag", self.bag, required, About{"name of the wrapped bundle"});
    }
};

}
