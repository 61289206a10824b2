#pragma once

#include "core/quantity.hpp"
#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <optional>

namespace flapdoor::rules {

class Evidence;

/// `within = { do = a, after = b, time = "2 h" }`: a begins no later than that after the first b has ended.
/// `within = { do = a, counted = "days-after", most = 30 }`: for what lies beyond the run's clock the card itself says how
/// long it took. A must be done at all once b has come (or, counted, at all).
struct Within {
    static constexpr std::string_view name = "within";

    Spot what;
    std::optional<Spot> after;
    std::optional<Time> time;
    std::string counted;
    std::optional<int> most;

    static void fields(auto& self, auto&& visit)
    {
        visit("do", self.what, required);
        visit("after", self.after, About{"the clock starts when this has ended"});
        visit("time", self.time, Range{0.0_s, 1000.0_h});
        visit("counted", self.counted, About{"parameter of the card that says how long it took"});
        visit("most", self.most, Range{0, 100000}, About{"largest value of that parameter"});
    }
};

Judgement judge(const Within& condition, const Evidence& evidence, const std::string& self);

}
