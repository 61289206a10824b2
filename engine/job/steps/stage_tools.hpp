#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>
#include <vector>

namespace flapdoor::job {

/// Everything that will be needed inside, before the flap door is hung.
struct StageTools {
    static constexpr std::string_view name = "stage-tools";
    static constexpr std::string_view title = "Bring tools and supplies inside";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 10.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    std::vector<SupplyId> supplies;

    static void fields(auto& self, auto&& visit)
    {
        visit("supplies", self.supplies, required, About{"what is brought in"});
    }
};

}
