#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class ClothesCare { vacuum, brush, blow, none };
enum class SoleCare { vacuum, wipe, covers_off, none };

/// Clothes and shoes of each person of this card.
struct CleanOff {
    static constexpr std::string_view name = "clean-off";
    static constexpr std::string_view title = "Clean off before leaving";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 90.0_s;
    static constexpr Per per = Per::person;
    static constexpr std::string_view needs = "HEPA vacuum";

    ClothesCare clothes = ClothesCare::vacuum;
    SoleCare soles = SoleCare::vacuum;
    SupplyId vacuum;

    static void fields(auto& self, auto&& visit)
    {
        visit("clothes", self.clothes);
        visit("soles", self.soles);
        visit("vacuum", self.vacuum);
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::ClothesCare> { static constexpr std::array<std::string_view, 4> words{"vacuum", "brush", "blow", "none"}; };
template <> struct Words<job::SoleCare> { static constexpr std::array<std::string_view, 4> words{"vacuum", "wipe", "covers-off", "none"}; };
}
