#pragma once

#include "rules/evaluate.hpp"
#include "rules/fraction.hpp"

#include <optional>
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

/// A card in a legal order nearest to the run's own.
struct SheetStep {
    int entry = -1;             ///< in the log; -1 for a card that has to be put in
    Sentence missing;           ///< what is put in, as people call it
    bool is_moved = false;
};

/// What the book asks for besides unbroken critical rules, and whether the run has it.
struct Cut {
    int least_percent = 0;
    int most_lost = 0;          ///< points
    bool is_met = true;
};

/// What a run is worth under a book, in points wanted and points lost. Exact and the same for the same run, always.
/// A teaching score for one book and one scenario: no clearance, no certification, no legal finding.
struct MarkingSheet {
    std::string book;
    std::string edition;
    std::int64_t wanted = 0;            ///< weights of all rules in force
    Quarters lost;
    Fraction score{1, 1};
    std::string outside;                ///< why the book is out of force in this run; empty when it is in force
    std::string outside_cite;
    bool is_passed = true;              ///< no critical rule broken, not even as a consequence (an unverified room is one), and the cut is met
    std::optional<Cut> cut;             ///< nothing when the book sets none
    std::vector<std::string> critical;  ///< ids of broken critical rules, consequences included
    int fewest_moves = 0;               ///< cards to move, put in or take out so that every order holds
    std::vector<SheetMove> moves;       ///< three quarters of an order's loss
    std::vector<SheetStep> legal_order; ///< fewest cards moved; empty when nothing has to move
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

/// Why the run is not passed, each reason in a few words: "critical no-open-flame, verification-passed (follows from
/// wet-cloth)", "15 points lost, at most 12". Empty when it is passed.
std::vector<Sentence> why_not_passed(const MarkingSheet& sheet);

/// Cards of the legal order that stay together as they are, or one that is moved or put in.
struct SheetStretch {
    int first = -1, last = -1;  ///< entries of the log; -1 for a card that has to be put in
    Sentence missing;           ///< what is put in, as people call it
    bool is_moved = false;
};
std::vector<SheetStretch> legal_stretches(const MarkingSheet& sheet);

/// The sheet as lines of plain text, in English: result, cards, rules, consequences, advice.
std::vector<std::string> print_out(const MarkingSheet& sheet);

}
