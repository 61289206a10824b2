#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct VacuumSheeting {
    static constexpr std::string_view name = "vacuum-sheeting";
    static constexpr std::string_view title = "Vacuum the sheeting";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 1.5_min;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "HEPA vacuum";

    SupplyId vacuum;

    static void fields(auto& self, auto&& visit)
    {
        visit("vacuum", self.vacuum, required);
    }
};

}
