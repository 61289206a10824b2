#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

namespace flapdoor::rules {

class Evidence;

/// `before = [a, b]`: every b has an a that ended earlier. Without any b the rule has no subject.
struct Before {
    static constexpr std::string_view name = "before";
    static constexpr bool is_written_as_list = true;

    Spot first;
    Spot then;

    static void fields(auto& self, auto&& visit)
    {
        visit("first", self.first, required, About{"what must have ended"});
        visit("then", self.then, required, About{"before each of these begins"});
    }
};

Judgement judge(const Before& before, const Evidence& evidence, const std::string& self);

}
