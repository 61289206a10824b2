#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class ToolCare { vacuum_and_wipe, wipe, none };

struct CleanTools {
    static constexpr std::string_view name = "clean-tools";
    static constexpr std::string_view title = "Clean the tools";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 8.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "HEPA vacuum, cloths";

    ToolCare care = ToolCare::vacuum_and_wipe;

    static void fields(auto& self, auto&& visit)
    {
        visit("care", self.care);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::ToolCare> { static constexpr std::array<std::string_view, 3> words{"vacuum-and-wipe", "wipe", "none"}; };
}
