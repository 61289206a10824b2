#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// A strip of sheeting in the passage, from the entrance on.
struct LayRunner {
    static constexpr std::string_view name = "lay-runner";
    static constexpr std::string_view title = "Lay a runner outside";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "sheeting";

    ZoneId zone;
    SupplyId sheeting;
    Length length = 6.0_ft;

    static void fields(auto& self, auto&& visit)
    {
        visit("zone", self.zone, required, About{"the passage"});
        visit("sheeting", self.sheeting, required);
        visit("length", self.length, Range{1.0_ft, 40.0_ft});
    }
};

}
