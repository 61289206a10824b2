#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Ends the check of items that failed twice. Not needed when there are none.
struct DryWipe {
    static constexpr std::string_view name = "dry-wipe";
    static constexpr std::string_view title = "Wipe with a dry cloth";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 3.0_min;
    static constexpr Per per = Per::item;
    static constexpr std::string_view needs = "dry cloth";

    SupplyId cloth;

    static void fields(auto& self, auto&& visit)
    {
        visit("cloth", self.cloth, required);
    }
};

}
