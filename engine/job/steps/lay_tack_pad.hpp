#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class PadSide { outside, inside };

/// Sticky sheets just outside the entrance.
struct LayTackPad {
    static constexpr std::string_view name = "lay-tack-pad";
    static constexpr std::string_view title = "Lay the tack pad";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "a tack pad";

    OpeningId opening;
    SupplyId pad;
    PadSide side = PadSide::outside;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required, About{"the entrance"});
        visit("pad", self.pad, required);
        visit("side", self.side);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::PadSide> { static constexpr std::array<std::string_view, 2> words{"outside", "inside"}; };
}
