#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <optional>

namespace flapdoor::rules {

class Evidence;

/// `after_each = { event = a, do = b, until = c }`: every a is followed by a b, done before the next c begins. Where no c
/// follows there is nothing left to prevent; without `until` the b must come before the end of the run.
struct AfterEach {
    static constexpr std::string_view name = "after_each";

    Spot event;
    Spot remedy;
    std::optional<Spot> until;

    static void fields(auto& self, auto&& visit)
    {
        visit("event", self.event, required);
        visit("do", self.remedy, required, About{"what must follow"});
        visit("until", self.until, About{"before the next of these"});
    }
};

Judgement judge(const AfterEach& condition, const Evidence& evidence, const std::string& self);

}
