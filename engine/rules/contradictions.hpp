#pragma once

#include "rules/rule_book.hpp"

namespace flapdoor::rules {

/// What the rules of a book say against one another: orders that close a circle, named rule by rule, and orders asked of
/// what another rule forbids. Rules that no scenario puts in force together do not contradict each other.
void find_contradictions(const RuleBook& book, Problems& problems);

}
