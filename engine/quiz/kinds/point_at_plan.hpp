#pragma once

#include "job/scenario.hpp"
#include "plan/rect.hpp"
#include "quiz/find_scenario.hpp"
#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A point or a size on the plan, `["3 ft", "2 ft 6 in"]`.
struct Across {
    static constexpr bool is_written_as_list = true;
    Length x{}, y{};

    static void fields(auto& self, auto&& visit)
    {
        visit("x", self.x, required, About{"to the east"});
        visit("y", self.y, required, About{"to the north"});
    }
};

/// A place that may be pointed at: a thing of the scenario, or a rectangle or spot of its floor.
struct Region {
    rules::Marked id;
    Phrase text;                    ///< how it is called where nobody can point
    std::optional<rules::Marked> thing;     ///< zone, opening, object, sill, counter or component
    std::optional<Across> at;       ///< instead: the spot, or the rectangle's south-west corner
    std::optional<Across> size;     ///< of the rectangle
    Length tolerance = 0.5_ft;      ///< how far beside it still counts
    bool is_right = false;
    std::string misconception;
    Phrase told;
    plan::Rect place;               ///< on the plan, without the tolerance; worked out by `locate`

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required, About{"name inside the question"});
        visit("text", self.text, required, About{"how it is called where nobody can point"});
        visit("thing", self.thing, About{"id of a zone, opening, object, sill, counter or component of the scenario"});
        visit("at", self.at, About{"instead of a thing: a spot, or the south-west corner of a rectangle"});
        visit("size", self.size, About{"width and depth of the rectangle"});
        visit("tolerance", self.tolerance, Range{0.0_ft, 6.0_ft}, About{"how far beside it still counts"});
        visit("right", self.is_right, About{"a right place"});
        visit("misconception", self.misconception, About{"name of the mistake behind a wrong place"});
        visit("told", self.told, About{"what is said to whoever pointed there"});
    }
};

/// A place on the plan of a scenario is pointed at. Where regions overlap, the smaller one counts.
struct PointAtPlan {
    static constexpr std::string_view name = "point-at-plan";
    rules::Marked scenario;
    std::vector<Region> regions;
    std::shared_ptr<const job::Scenario> site;  ///< worked out by `locate`

    static void fields(auto& self, auto&& visit)
    {
        visit("scenario", self.scenario, required, About{"id of the scenario whose plan is shown"});
        visit("region", self.regions, required, About{"places; at least one is right"});
    }
};

/// Where a thing of a scenario is on the plan; openings and sills as strips along their wall. Nothing for an unknown id.
std::optional<plan::Rect> place_of_thing(const job::Scenario& scenario, const std::string& id);

/// Fills in the places. Names that the scenario does not have are told.
void locate(PointAtPlan& asked, const FindScenario& find, Complaints& complaints);

/// The region that a point falls in, or null.
const Region* region_at(const PointAtPlan& asked, plan::Point at);

Mark mark(const PointAtPlan& asked, const Response& response);
void check(const PointAtPlan& asked, const Place& where, Complaints& complaints);

}
