#pragma once

#include "rules/conditions/after_each.hpp"
#include "rules/conditions/at_least.hpp"
#include "rules/conditions/before.hpp"
#include "rules/conditions/exactly_one_of.hpp"
#include "rules/conditions/never.hpp"
#include "rules/conditions/not_before.hpp"
#include "rules/conditions/only_by.hpp"
#include "rules/conditions/repeat_until.hpp"
#include "rules/conditions/while.hpp"
#include "rules/conditions/within.hpp"

#include <variant>

namespace flapdoor::rules {

/// Every kind of condition. A new kind is a header and a source in conditions/ and one line here.
using AnyCondition = std::variant<Before, NotBefore, While, AfterEach, Within, OnlyBy, AtLeast, RepeatUntil, Never, ExactlyOneOf>;

/// What a rule asks. In files a table with one key, the kind: `{ before = ["post-signs", "first-dust"] }`.
struct Condition {
    AnyCondition kind;
    Place where;

    static void from_node(const text::Node& node, Condition& into, Problems& problems);
    static text::Node to_node(const Condition& condition);
};

std::string_view kind_name(const Condition& condition);

/// What the condition says about the thing `self` (empty: about the run).
Judgement judge(const Condition& condition, const Evidence& evidence, const std::string& self);

/// Calls `visit(spot)` for every spot of a condition.
template <class Visit>
void for_each_spot(const Condition& condition, Visit&& visit)
{
    const auto take = [&](std::string_view, const auto& field, const auto&...) {
        using Field = std::decay_t<decltype(field)>;
        if constexpr (std::is_same_v<Field, Spot>) visit(field);
        else if constexpr (std::is_same_v<Field, std::optional<Spot>>) {
            if (field) visit(*field);
        }
        else if constexpr (std::is_same_v<Field, std::vector<Spot>>)
            for (const Spot& spot : field) visit(spot);
    };
    std::visit([&]<class Kind>(const Kind& kind) { Kind::fields(kind, take); }, condition.kind);
}

}
