#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"
#include "job/steps/vacuum_surfaces.hpp"

#include <string_view>

namespace flapdoor::job {

/// Sills, counters, hard furniture; the floor is mopped.
struct WipeSurfaces {
    static constexpr std::string_view name = "wipe-surfaces";
    static constexpr std::string_view title = "Wipe surfaces with damp cloths";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 1.5_min;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "damp cloths";

    Target target = Target::everything;
    SupplyId cloth;
    bool changes_cloth = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("target", self.target, required);
        visit("cloth", self.cloth, required);
        visit("changes-cloth", self.changes_cloth, About{"a fresh face for each surface"});
    }
};

}
