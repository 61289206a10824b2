#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Sheeting over a closed door.
struct CoverDoor {
    static constexpr std::string_view name = "cover-door";
    static constexpr std::string_view title = "Cover a door that is not used";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 8.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "sheeting and tape";

    OpeningId opening;
    SupplyId sheeting;
    bool is_taped = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
        visit("sheeting", self.sheeting, required);
        visit("is-taped", self.is_taped, About{"taped on all edges"});
    }
};

}
