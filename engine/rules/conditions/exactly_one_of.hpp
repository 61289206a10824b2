#pragma once

#include "rules/judgement.hpp"
#include "rules/spot.hpp"

#include <vector>

namespace flapdoor::rules {

class Evidence;

/// `exactly_one_of = [a, b]`: of these, one occurs in the run and the others do not; however often it occurs.
struct ExactlyOneOf {
    static constexpr std::string_view name = "exactly_one_of";

    std::vector<Spot> spots;

    static void fields(auto& self, auto&& visit) { visit("spots", self.spots, required, About{"of which one occurs"}); }

    static void from_node(const text::Node& node, ExactlyOneOf& into, Problems& problems);
    static text::Node to_node(const ExactlyOneOf& condition);
};

Judgement judge(const ExactlyOneOf& condition, const Evidence& evidence, const std::string& self);

}
