#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Covers an object that stays, every seam and edge taped.
struct CoverObject {
    static constexpr std::string_view name = "cover-object";
    static constexpr std::string_view title = "Cover what stays";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 6.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "sheeting and tape";

    ObjectId object;
    SupplyId sheeting;
    bool is_sealed = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("object", self.object, required);
        visit("sheeting", self.sheeting, required);
        visit("is-sealed", self.is_sealed, About{"all seams and edges taped"});
    }
};

}
