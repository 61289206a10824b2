#pragma once

#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "rules/judgement.hpp"
#include "rules/rule_book.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

enum class Ruling {
    kept,
    broken,
    consequence,        ///< broken too, but a root rule already says so: listed, not weighed
    not_applicable      ///< not in force here, or its subject is absent
};

struct Verdict {
    std::string rule;               ///< id
    Ruling ruling = Ruling::not_applicable;
    std::vector<Fault> faults;      ///< in the order of things and time; empty unless broken or a consequence
    std::vector<CardPair> pairs;    ///< cards of whose order the rule spoke
    std::vector<std::string> roots; ///< broken rules of which this one is a consequence
};

/// The case that puts the book out of force in this run, or null. Refers to the book.
const Outside* outside_of(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log);

/// One verdict a rule, in the order of the book. The same for the same book, scenario and log, always.
/// A book that is out of force has only rules that do not apply.
std::vector<Verdict> evaluate(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log);

}

namespace flapdoor::inline core {
template <> struct Words<rules::Ruling> { static constexpr std::array<std::string_view, 4> words{"kept", "broken", "consequence", "not-applicable"}; };
}
