#pragma once

#include "rules/rule_book.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

/// Everything wrong with a book that its form does not show, each with its place: unknown steps, parameters, values,
/// states, measures and facts; `this` without `each`; duplicate ids; a must-rule without a citation; a critical rule on a
/// listed or practice order, or one that may follow from less than a must-rule; a change without a book below; a rule that follows from itself; rules of order that contradict one another, named; an order
/// asked of what another rule forbids; conditions that say too little or too much.
Problems lint(const RuleBook& book);

/// Why a rule can never be in force in this scenario, whatever is done.
struct Idle {
    std::string rule;
    std::string why;
    Place where;        ///< of the rule in its file
};
std::vector<Idle> idle_rules(const RuleBook& book, const job::Scenario& scenario);

}
