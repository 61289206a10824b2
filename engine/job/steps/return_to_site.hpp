#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Each person of this card is back on the site, outside the work area.
struct ReturnToSite {
    static constexpr std::string_view name = "return-to-site";
    static constexpr std::string_view title = "Return to the site";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::anyone;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    static void fields(auto&, auto&&) {}
};

}
