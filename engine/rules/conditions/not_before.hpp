#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

namespace flapdoor::rules {

class Evidence;

/// `not_before = [a, b]`: no a begins until b holds. A state must hold then; of cards all must have ended, and there must
/// be one; a moment must have come. Without any a the rule has no subject.
struct NotBefore {
    static constexpr std::string_view name = "not_before";
    static constexpr bool is_written_as_list = true;

    Spot what;
    Spot until;

    static void fields(auto& self, auto&& visit)
    {
        visit("what", self.what, required, About{"what may not begin"});
        visit("until", self.until, required, About{"until this holds, or all of these have ended"});
    }
};

Judgement judge(const NotBefore& not_before, const Evidence& evidence, const std::string& self);

}
