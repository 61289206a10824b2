#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Vacuum, then damp wipe or mop, of each item that failed or where dust was seen. Not needed when nothing failed.
struct ReClean {
    static constexpr std::string_view name = "re-clean";
    static constexpr std::string_view title = "Clean again what failed";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 4.0_min;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "HEPA vacuum, damp cloth or mop";

    SupplyId vacuum;
    SupplyId cloth;

    static void fields(auto& self, auto&& visit)
    {
        visit("vacuum", self.vacuum, About{"left out: not vacuumed"});
        visit("cloth", self.cloth, About{"left out: not wiped"});
    }
};

}
