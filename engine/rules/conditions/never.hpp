#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <vector>

namespace flapdoor::rules {

class Evidence;

/// `never = { step = "fold-sheeting", with = { dirty-side = "outward" } }`, or a list of such: none of it happens. A
/// spot with parameters or a measure has a subject only when a card of its kinds was carried out at all.
struct Never {
    static constexpr std::string_view name = "never";

    std::vector<Spot> any_of;

    static void fields(auto& self, auto&& visit) { visit("any-of", self.any_of, required, About{"what must not happen"}); }

    static void from_node(const text::Node& node, Never& into, Problems& problems);
    static text::Node to_node(const Never& never);
};

Judgement judge(const Never& never, const Evidence& evidence, const std::string& self);

}
