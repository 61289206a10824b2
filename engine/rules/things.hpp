#pragma once

#include "core/fields.hpp"
#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "rules/vocabulary.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::rules {

/// The things a rule can ask something of one by one; `this` in the rule is each of them in turn.
enum class Each {
    reg,            ///< registers of the work room, "register" in files
    window,         ///< windows of the work room
    entrance,       ///< doors of the work room that are passed, or hung with a flap
    unused_door,    ///< its other doors
    door,           ///< all its doors
    opening,        ///< every door, window and register of the work room
    object,         ///< furniture and fixed things in it
    sill,
    counter,
    component,      ///< painted parts that are worked on
    person,         ///< the whole crew
    worker,         ///< crew without the certified renovators
    bag,            ///< bags and bundles named by the cards
    item            ///< sills, counters and floor sections that were wiped for verification
};

/// Ids of the things, in the order of the scenario (or of the log, for bags and items). What was done may matter: which
/// door is the entrance shows only in the log.
std::vector<std::string> things(Each each, const job::Scenario& scenario, const job::RunLog& log);

/// What such ids name, so that a lint can tell `opening = "this"` from nonsense.
ThingKind thing_kind(Each each);

/// How people call a thing of the scenario; the id itself for what has no title.
std::string title_of_thing(const std::string& id, const job::Scenario& scenario);

/// A yes-or-no fact of a scenario on which a rule can depend.
struct Fact {
    std::string_view name;
    bool (*holds)(const job::Scenario&);
};
std::span<const Fact> facts();
const Fact* find_fact(std::string_view name);

/// The zone that is worked in, or null when the scenario names none.
const job::Zone* work_room(const job::Scenario& scenario);

}

namespace flapdoor::inline core {
template <> struct Words<rules::Each> {
    static constexpr std::array<std::string_view, 14> words{"register", "window", "entrance", "unused-door", "door", "opening", "object",
                                                            "sill", "counter", "component", "person", "worker", "bag", "item"};
};
}
