#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct Wait {
    static constexpr std::string_view name = "wait";
    static constexpr std::string_view title = "Wait";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = Time{};
    static constexpr Per per = Per::own;
    static constexpr std::string_view needs = "";

    Time time = 1.0_h;
    bool only_if_due = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("time", self.time, required, Range{1.0_min, 72.0_h});
        visit("only-if-due", self.only_if_due, About{"not needed unless an item has failed twice"});
    }
};

}
