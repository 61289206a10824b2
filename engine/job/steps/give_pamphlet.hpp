#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class Receipt { signed_for, mailed, refusal_noted, none };

/// Information for owner and occupants before the work.
struct GivePamphlet {
    static constexpr std::string_view name = "give-pamphlet";
    static constexpr std::string_view title = "Give the lead pamphlet";
    static constexpr Phase phase = Phase::paper;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 1.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "the federal pamphlet";

    int days_before = 7;
    Receipt receipt = Receipt::signed_for;

    static void fields(auto& self, auto&& visit)
    {
        visit("days-before", self.days_before, Range{0, 3650}, About{"days between the receipt or the mailing and the start"});
        visit("receipt", self.receipt, About{"what proves it"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::Receipt> { static constexpr std::array<std::string_view, 4> words{"signed-for", "mailed", "refusal-noted", "none"}; };
}
