#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <optional>

namespace flapdoor::rules {

class Evidence;

/// `while = { state = "signs-up", from = "first-dust", to = "passed" }`: the state holds (or, with `is = false`, fails) at
/// every instant of a stretch: from the first `from` to the last `to`, or to the end of the run when `to` never comes; or
/// during each card that `during` names.
struct While {
    static constexpr std::string_view name = "while";

    std::string state;
    std::string of;
    bool is = true;
    std::optional<Spot> during;
    std::optional<Spot> from;
    std::optional<Spot> to;

    static void fields(auto& self, auto&& visit)
    {
        visit("state", self.state, required);
        visit("of", self.of, About{"object of the state; `this`; left out: any object will do"});
        visit("is", self.is, About{"false: the state must not hold"});
        visit("during", self.during, About{"each of these cards"});
        visit("from", self.from, About{"instead of `during`: start of the stretch"});
        visit("to", self.to, About{"end of the stretch"});
    }
};

Judgement judge(const While& condition, const Evidence& evidence, const std::string& self);

}
