#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"
#include "job/steps/vacuum_surfaces.hpp"

#include <string_view>

namespace flapdoor::job {

struct MopFloor {
    static constexpr std::string_view name = "mop-floor";
    static constexpr std::string_view title = "Mop the floor";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 72.0_s;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "a mop";

    SupplyId mop;
    CleaningPath path = CleaningPath::toward_door;
    Route route;
    int water_changes = 1;

    static void fields(auto& self, auto&& visit)
    {
        visit("mop", self.mop, required);
        visit("path", self.path);
        visit("route", self.route, About{"drawn way over the floor; only what lies along it is cleaned, instead of strips by `path`"});
        visit("water-changes", self.water_changes, Range{0, 20});
    }
};

}
