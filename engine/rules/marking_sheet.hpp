#pragma once

#include "rules/evaluate.hpp"
#include "rules/fraction.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

/// A card that has to move, to be put in or to be left out.
struct SheetMove {
    int entry = -1;             ///< in the log; -1 for a missing card
    std::string missing;        ///< what is missing
    int points = 0;             ///< of which three quarters are lost
    Quarters lost;
    std::string rule;           ///< heaviest broken rule it stands in; empty when only implied ones are broken
    Sentence what;
};

/// A rule as the sheet shows it.
struct SheetRule {
    std::string rule;
    std::string says;
    std::string cite;
    std::string reason;
    std::string harm;
    RuleClass weight_class = RuleClass::must;
    int weight = 0;
    bool is_critical = false;
    Quarters lost;              ///< a quarter of the weight for an order, all of it for a line
    std::vector<Fault> faults;
    std::vector<std::string> roots; ///< of a consequence
};

/// What a run is worth under a book, in points wanted and points lost. Exact and the same for the same run, always.
/// A teaching score for one book and one scenario: no clearance, no certification, no legal finding.
struct MarkingSheet {
    std::string book;
    std::string edition;
    std::int64_t wanted = 0;            ///< weights of all rules in force
    Quarters lost;
    Fraction score{1, 1};
    bool is_passed = true;              ///< no critical rule broken, not even as a consequence: an unverified room is one
    std::vector<std::string> critical;  ///< ids of broken critical rules, consequences included
    int fewest_moves = 0;               ///< cards to move, put in or take out so that every order holds
    std::vector<SheetMove> moves;       ///< three quarters of an order's loss
    std::vector<SheetRule> broken;      ///< rules of order, one quarter each
    std::vector<SheetRule> lines;       ///< broken rules without an order, lost in full
    std::vector<SheetRule> consequences;
    std::vector<SheetRule> advice;      ///< broken rules of weight 0
    std::vector<SheetRule> kept;
    std::vector<SheetRule> not_applicable;
};

MarkingSheet marking_sheet(const RuleBook& book, const job::Scenario& scenario, const job::RunLog& log);

/// From verdicts of the same book and log.
MarkingSheet marking_sheet(const RuleBook& book, const std::vector<Verdict>& verdicts, const job::RunLog& log);

/// The sheet as lines of plain text, in English: result, cards, rules, consequences, advice.
std::vector<std::string> print_out(const MarkingSheet& sheet);

}
