#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

struct VacuumCarpet {
    static constexpr std::string_view name = "vacuum-carpet";
    static constexpr std::string_view title = "Vacuum carpet";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = Time{};
    static constexpr Per per = Per::own;
    static constexpr std::string_view needs = "HEPA vacuum with beater bar";

    SupplyId vacuum;
    bool has_beater_bar = true;
    double minutes_per_square_meter = 6.0;

    static void fields(auto& self, auto&& visit)
    {
        visit("vacuum", self.vacuum, required);
        visit("has-beater-bar", self.has_beater_bar);
        visit("minutes-per-square-meter", self.minutes_per_square_meter, Range{0.05, 30.0});
    }
};

}
