#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct WipeCounter {
    static constexpr std::string_view name = "wipe-counter";
    static constexpr std::string_view title = "Verification wipe of a counter";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::item;
    static constexpr std::string_view needs = "wet cloth, card";

    CounterId counter;
    int section = 0;
    SupplyId cloth;

    static void fields(auto& self, auto&& visit)
    {
        visit("counter", self.counter, required);
        visit("section", self.section, Range{0, 100}, About{"0 is every section that is due"});
        visit("cloth", self.cloth, required);
    }
};

}
