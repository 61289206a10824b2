#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Where nobody reaches it.
struct StoreWaste {
    static constexpr std::string_view name = "store-waste";
    static constexpr std::string_view title = "Store the waste";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    bool is_secured = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("is-secured", self.is_secured, About{"locked or barred"});
    }
};

}
