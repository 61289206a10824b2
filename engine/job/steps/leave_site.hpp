#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Each person of this card goes off the site and does nothing there until they return.
struct LeaveSite {
    static constexpr std::string_view name = "leave-site";
    static constexpr std::string_view title = "Leave the site";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    bool is_reachable = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("is-reachable", self.is_reachable, About{"by telephone"});
    }
};

}
