#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"
#include "job/waypoint.hpp"

#include <string_view>

namespace flapdoor::job {

enum class Target { everything, sills, counters, objects, floor };
enum class CleaningPath { toward_door, from_door };

/// Sills, counters, furniture and floor of the work room, from high to low when all are named.
struct VacuumSurfaces {
    static constexpr std::string_view name = "vacuum-surfaces";
    static constexpr std::string_view title = "Vacuum surfaces";
    static constexpr Phase phase = Phase::cleaning;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = Time{};
    static constexpr Per per = Per::own;
    static constexpr std::string_view needs = "HEPA vacuum";

    Target target = Target::everything;
    SupplyId vacuum;
    double minutes_per_square_meter = 2.5;
    CleaningPath path = CleaningPath::toward_door;
    Route route;
    bool crosses = true;
    bool does_edges = true;

    static void fields(auto& self, auto&& visit)
    {
        visit("target", self.target, required);
        visit("vacuum", self.vacuum, required);
        visit("minutes-per-square-meter", self.minutes_per_square_meter, Range{0.05, 20.0}, About{"exposure; one quick stroke is 0.1 to 0.2"});
        visit("path", self.path);
        visit("route", self.route, About{"drawn way over the floor; only what lies along it is cleaned, instead of strips by `path`"});
        visit("crosses", self.crosses, About{"a second pass across the first"});
        visit("does-edges", self.does_edges, About{"the strip along walls and things once more"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::Target> { static constexpr std::array<std::string_view, 5> words{"everything", "sills", "counters", "objects", "floor"}; };
template <> struct Words<job::CleaningPath> { static constexpr std::array<std::string_view, 2> words{"toward-door", "from-door"}; };
}
