#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct CloseWindow {
    static constexpr std::string_view name = "close-window";
    static constexpr std::string_view title = "Close a window";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 1.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
    }
};

}
