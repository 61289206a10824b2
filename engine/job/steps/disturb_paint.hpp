#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class Technique { pry, remove_window, hand_scrape, hand_sand, machine_sand, saw, heat_gun, open_flame, demolish, drill };

/// The work task itself. The first one begins the renovation.
struct DisturbPaint {
    static constexpr std::string_view name = "disturb-paint";
    static constexpr std::string_view title = "Work on the paint";
    static constexpr Phase phase = Phase::work;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = Time{};
    static constexpr Per per = Per::own;
    static constexpr std::string_view needs = "the tool of the technique";

    ComponentId component;
    Technique technique = Technique::pry;
    bool is_misted = true;
    bool has_shroud = false;
    bool has_hepa = false;
    Temperature heat = celsius(0.0);
    Time time = 20.0_min;
    double share = 1.0;

    static void fields(auto& self, auto&& visit)
    {
        visit("component", self.component, required);
        visit("technique", self.technique, required);
        visit("is-misted", self.is_misted, About{"the surface is kept misted"});
        visit("has-shroud", self.has_shroud, About{"machines: shroud at the point of generation"});
        visit("has-hepa", self.has_hepa, About{"machines: HEPA vacuum attached"});
        visit("heat", self.heat, Range{celsius(0.0), celsius(1500.0)}, About{"heat gun: setting"});
        visit("time", self.time, Range{1.0_min, 8.0_h});
        visit("share", self.share, Range{0.01, 1.0}, About{"of the component's painted area"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::Technique> { static constexpr std::array<std::string_view, 10> words{"pry", "remove-window", "hand-scrape", "hand-sand", "machine-sand", "saw", "heat-gun", "open-flame", "demolish", "drill"}; };
}
