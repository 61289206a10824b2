#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Sheeting on the floor round the worked components.
struct LayFloorSheet {
    static constexpr std::string_view name = "lay-floor-sheet";
    static constexpr std::string_view title = "Lay floor sheeting";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 1.0_min;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "sheeting and tape";

    SupplyId sheeting;
    Length reach = 6.0_ft;
    bool is_taped = true;
    int layers = 1;

    static void fields(auto& self, auto&& visit)
    {
        visit("sheeting", self.sheeting, required);
        visit("reach", self.reach, Range{0.0_ft, 40.0_ft}, About{"beyond the worked components, on every free side"});
        visit("is-taped", self.is_taped);
        visit("layers", self.layers, Range{1, 3});
    }
};

}
