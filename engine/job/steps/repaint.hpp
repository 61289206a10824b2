#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Fresh paint on a prepared surface; no old paint is disturbed.
struct Repaint {
    static constexpr std::string_view name = "repaint";
    static constexpr std::string_view title = "Paint a prepared surface";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 40.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "paint";

    ComponentId component;

    static void fields(auto& self, auto&& visit)
    {
        visit("component", self.component, required, About{"what is painted"});
    }
};

}
