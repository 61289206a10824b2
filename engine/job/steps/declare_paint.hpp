#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class PaintBasis { presumed, kit, laboratory };

/// Test the paint, or work as if it holds lead.
struct DeclarePaint {
    static constexpr std::string_view name = "declare-paint";
    static constexpr std::string_view title = "Settle what the paint is";
    static constexpr Phase phase = Phase::paper;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 2.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    PaintBasis basis = PaintBasis::presumed;

    static void fields(auto& self, auto&& visit)
    {
        visit("basis", self.basis, About{"how it is known"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::PaintBasis> { static constexpr std::array<std::string_view, 3> words{"presumed", "kit", "laboratory"}; };
}
