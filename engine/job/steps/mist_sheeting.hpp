#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct MistSheeting {
    static constexpr std::string_view name = "mist-sheeting";
    static constexpr std::string_view title = "Mist the sheeting";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 4.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "a mister";

    SupplyId mister;
    bool mists_air = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("mister", self.mister, required);
        visit("mists-air", self.mists_air, About{"the air of the room too, which brings dust down"});
    }
};

}
