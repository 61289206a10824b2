#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Two sheets over the entrance so that people pass and dust stays.
struct HangFlap {
    static constexpr std::string_view name = "hang-flap";
    static constexpr std::string_view title = "Hang the flap door";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 20.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "sheeting, tape, a dowel";

    OpeningId opening;
    SupplyId sheeting;
    int sheets = 2;
    bool is_taped = true;
    bool has_folds = true;
    bool has_dowel = true;
    Length gap = 3.0_in;
    Length slit_length = 1.70_m;
    Length slit_foot = 0.15_m;
    bool is_slit_through = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required, About{"the entrance"});
        visit("sheeting", self.sheeting, required);
        visit("sheets", self.sheets, Range{1, 2}, About{"one slit sheet, or a slit sheet and a weighted flap"});
        visit("is-taped", self.is_taped, About{"first sheet taped all round the frame"});
        visit("has-folds", self.has_folds, About{"slack folded in at top and bottom"});
        visit("has-dowel", self.has_dowel, About{"second sheet weighted at its lower edge"});
        visit("gap", self.gap, Range{0.0_in, 3.0_ft}, About{"second sheet above the floor"});
        visit("slit-length", self.slit_length, Range{2.0_ft, 8.0_ft}, About{"slit in the first sheet"});
        visit("slit-foot", self.slit_foot, Range{0.0_in, 3.0_ft}, About{"lower end of the slit above the floor"});
        visit("is-slit-through", self.is_slit_through, About{"the slit was cut through both sheets"});
    }
};

}
