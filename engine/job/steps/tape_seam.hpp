#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// Closes the cracks round a window, a register or a flap frame.
struct TapeSeam {
    static constexpr std::string_view name = "tape-seam";
    static constexpr std::string_view title = "Tape the seams of an opening";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 3.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "tape";

    OpeningId opening;
    SupplyId tape;
    int layers = 1;
    Length overlap = 2.0_in;

    static void fields(auto& self, auto&& visit)
    {
        visit("opening", self.opening, required);
        visit("tape", self.tape, required);
        visit("layers", self.layers, Range{1, 4});
        visit("overlap", self.overlap, Range{0.5_in, 1.0_ft});
    }
};

}
