#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class LightUsed { as_it_is, all_lights, flashlight };

/// Looks for dust, debris and residue everywhere in the work area.
struct Inspect {
    static constexpr std::string_view name = "inspect";
    static constexpr std::string_view title = "Inspect by eye";
    static constexpr Phase phase = Phase::verification;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 10.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "light, shoe covers";

    LightUsed light = LightUsed::flashlight;
    bool shoe_covers = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("light", self.light);
        visit("shoe-covers", self.shoe_covers);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::LightUsed> { static constexpr std::array<std::string_view, 3> words{"as-it-is", "all-lights", "flashlight"}; };
}
