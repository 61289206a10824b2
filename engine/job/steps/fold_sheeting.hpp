#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class DirtySide { inward, outward };

struct FoldSheeting {
    static constexpr std::string_view name = "fold-sheeting";
    static constexpr std::string_view title = "Fold the sheeting";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 15.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    DirtySide dirty_side = DirtySide::inward;

    static void fields(auto& self, auto&& visit)
    {
        visit("dirty-side", self.dirty_side);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::DirtySide> { static constexpr std::array<std::string_view, 2> words{"inward", "outward"}; };
}
