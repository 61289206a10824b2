#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class WallOrder { top_down, bottom_up };

struct VacuumWalls {
    static constexpr std::string_view name = "vacuum-walls";
    static constexpr std::string_view title = "Vacuum the walls";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 75.0_s;
    static constexpr Per per = Per::area;
    static constexpr std::string_view needs = "HEPA vacuum";

    SupplyId vacuum;
    WallOrder order = WallOrder::top_down;

    static void fields(auto& self, auto&& visit)
    {
        visit("vacuum", self.vacuum, required);
        visit("order", self.order);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::WallOrder> { static constexpr std::array<std::string_view, 2> words{"top-down", "bottom-up"}; };
}
