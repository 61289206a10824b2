#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Out and back in again through the entrance.
struct FetchItem {
    static constexpr std::string_view name = "fetch-item";
    static constexpr std::string_view title = "Fetch something forgotten";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 3.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    SupplyId item;
    OpeningId opening;

    static void fields(auto& self, auto&& visit)
    {
        visit("item", self.item, required);
        visit("opening", self.opening, required);
    }
};

}
