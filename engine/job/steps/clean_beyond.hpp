#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// The strip of floor round the work area.
struct CleanBeyond {
    static constexpr std::string_view name = "clean-beyond";
    static constexpr std::string_view title = "Clean beyond the work area";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 5.0_min;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "HEPA vacuum, mop";

    Length reach = 2.0_ft;
    SupplyId vacuum;
    SupplyId mop;

    static void fields(auto& self, auto&& visit)
    {
        visit("reach", self.reach, required, Range{0.0_ft, 10.0_ft});
        visit("vacuum", self.vacuum, required);
        visit("mop", self.mop);
    }
};

}
