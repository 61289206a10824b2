#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class Closure { gooseneck, tape, knot };
enum class Press { gently, hard, none, by_vacuum };

/// Gets the air out of a bag and closes its neck.
struct CloseBag {
    static constexpr std::string_view name = "close-bag";
    static constexpr std::string_view title = "Close a bag";
    static constexpr Phase phase = Phase::waste;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 3.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "tape";

    BagId bag;
    Closure closure = Closure::gooseneck;
    Press press = Press::gently;
    Length twist = 9.0_in;
    bool is_folded = true;
    bool has_loop = true;
    SupplyId vacuum;

    static void fields(auto& self, auto&& visit)
    {
        visit("bag", self.bag, required);
        visit("closure", self.closure);
        visit("press", self.press, About{"how the air is got out"});
        visit("twist", self.twist, Range{0.0_in, 3.0_ft}, About{"length of the twisted neck"});
        visit("is-folded", self.is_folded, About{"gooseneck: the twisted neck is folded over before it is taped"});
        visit("has-loop", self.has_loop, About{"gooseneck: taped once more below, so that a loop to carry it by remains"});
        visit("vacuum", self.vacuum, About{"with `press = \"by-vacuum\"`: what draws the air out"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::Closure> { static constexpr std::array<std::string_view, 3> words{"gooseneck", "tape", "knot"}; };
template <> struct Words<job::Press> { static constexpr std::array<std::string_view, 4> words{"gently", "hard", "none", "by-vacuum"}; };
}
