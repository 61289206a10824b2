#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct WipeFloor {
    static constexpr std::string_view name = "wipe-floor";
    static constexpr std::string_view title = "Verification wipe of the floor";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 4.0_min;
    static constexpr Per per = Per::item;
    static constexpr std::string_view needs = "wet cloth, long handle, card";

    int section = 0;
    int sections = 0;
    SupplyId cloth;
    bool has_handle = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("section", self.section, Range{0, 100}, About{"0 is every section that is due"});
        visit("sections", self.sections, Range{0, 100}, About{"into how many the floor is divided; 0 is as many as the rule asks"});
        visit("cloth", self.cloth, required);
        visit("has-handle", self.has_handle, About{"cloth on a long-handled device"});
    }
};

}
