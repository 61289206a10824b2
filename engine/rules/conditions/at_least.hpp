#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <optional>

namespace flapdoor::rules {

class Evidence;

/// Enough of something.
/// `at_least = { measured = "reach", at = a, least = "6 ft" }`: what was measured at those cards, each time (or `which`);
/// `most` and `below` bound it from above. `least = "sections-due"` asks for as many sections as the wiped floor needs.
/// `at_least = { done = a, times = 2, by = b }`: each b has so many a before it; without `by`, so many in the run.
struct AtLeast {
    static constexpr std::string_view name = "at_least";

    std::string measured;
    std::string of;
    std::optional<Spot> at;
    Which which = Which::each;
    std::string least;
    std::string most;
    std::string below;
    std::optional<Spot> done;
    int times = 1;
    std::optional<Spot> by;

    static void fields(auto& self, auto&& visit)
    {
        visit("measured", self.measured);
        visit("of", self.of, About{"object of the measure; `this`; left out: every object"});
        visit("at", self.at, About{"cards at which it is measured; left out: all"});
        visit("which", self.which, About{"each, the first or the last measurement of an object"});
        visit("least", self.least, About{"\"6 ft\", \"true\", \"3\" or \"sections-due\""});
        visit("most", self.most);
        visit("below", self.below);
        visit("done", self.done, About{"instead of `measured`: cards to be counted"});
        visit("times", self.times, Range{1, 1000});
        visit("by", self.by, About{"counted before each of these"});
    }
};

Judgement judge(const AtLeast& condition, const Evidence& evidence, const std::string& self);

}
