#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class GearPlace { inside, outside };

/// Each person of this card.
struct TakeOffGear {
    static constexpr std::string_view name = "take-off-gear";
    static constexpr std::string_view title = "Take off protective gear";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 4.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    GearPlace place = GearPlace::inside;

    static void fields(auto& self, auto&& visit)
    {
        visit("place", self.place, About{"inside the work area, or after leaving it"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::GearPlace> { static constexpr std::array<std::string_view, 2> words{"inside", "outside"}; };
}
