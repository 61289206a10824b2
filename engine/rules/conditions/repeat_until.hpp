#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <optional>

namespace flapdoor::rules {

class Evidence;

/// `repeat_until = { check = a, measured = "dust-seen", good = "false", do = b, bars = c }`: after a check that did not
/// come out good comes b, then another check, and no c before a check is good. The last check must be good.
struct RepeatUntil {
    static constexpr std::string_view name = "repeat_until";

    Spot check;
    std::string measured;
    std::string of;
    std::string good;
    Spot again;
    std::optional<Spot> bars;

    static void fields(auto& self, auto&& visit)
    {
        visit("check", self.check, required);
        visit("measured", self.measured, required, About{"measure of the check that says how it came out"});
        visit("of", self.of, About{"object of the measure; `this`; left out: every object must come out good"});
        visit("good", self.good, required, About{"value of a check that came out good"});
        visit("do", self.again, required, About{"what is done before the next check"});
        visit("bars", self.bars, About{"what may not come until a check is good"});
    }
};

Judgement judge(const RepeatUntil& condition, const Evidence& evidence, const std::string& self);

}
