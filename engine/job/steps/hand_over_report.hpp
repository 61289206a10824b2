#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct HandOverReport {
    static constexpr std::string_view name = "hand-over-report";
    static constexpr std::string_view title = "Give the report to the owner";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    int days_after = 0;
    int days_after_invoice = 0;

    static void fields(auto& self, auto&& visit)
    {
        visit("days-after", self.days_after, Range{0, 3650}, About{"after completion"});
        visit("days-after-invoice", self.days_after_invoice, Range{0, 3650}, About{"after the final invoice; 0 is with it, or before it"});
    }
};

}
