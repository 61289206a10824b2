#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct WipeSill {
    static constexpr std::string_view name = "wipe-sill";
    static constexpr std::string_view title = "Verification wipe of a sill";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::item;
    static constexpr std::string_view needs = "wet cloth, card";

    SillId sill;
    SupplyId cloth;
    bool folds_used_cloth = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("sill", self.sill, required);
        visit("cloth", self.cloth, required);
        visit("folds-used-cloth", self.folds_used_cloth, About{"second wipe with an unused face of the same cloth"});
    }
};

}
