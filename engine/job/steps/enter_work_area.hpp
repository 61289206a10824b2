#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct EnterWorkArea {
    static constexpr std::string_view name = "enter-work-area";
    static constexpr std::string_view title = "Enter the work area";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 30.0_s;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
    }
};

}
