#pragma once

#include "rules/fraction.hpp"
#include "rules/order_task.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

/// The cards as they were laid.
struct OrderAnswer {
    std::vector<std::vector<int>> slots;    ///< time slots in order; cards in one slot are carried out at the same time
    std::vector<int> broken_lines;          ///< rules without an order that were found broken elsewhere
};

/// Each card once, one after the other.
OrderAnswer one_by_one(const std::vector<int>& cards);

enum class Breach {
    order,      ///< a card stands too early
    left_out,   ///< a required card is missing
    forbidden,  ///< a forbidden card was laid
    line        ///< a rule without an order
};

struct BrokenRule {
    int rule = 0;
    Breach how = Breach::order;
    std::vector<OrderPair> pairs;   ///< broken pairs of cards; only for an order
    int card = -1;                  ///< the missing or forbidden card
};

/// Fewest moves that make all rules of at least `weight` hold.
struct MoveLevel {
    int weight = 0;
    int moves = 0;                  ///< missing cards to put in and forbidden ones to take out included
    std::vector<int> cards;         ///< one smallest set among the cards that were laid in the wrong place
};

/// One line of the three quarters that go by cards.
struct MoveLine {
    int card = 0;
    Breach how = Breach::order;
    int points = 0;                 ///< charge before the three quarters are taken
    int level = 0;                  ///< weight of the rules for whose sake it moves
    int rule = -1;                  ///< heaviest broken rule it stands in, -1 when only an implied pair is broken
    int before = -1, after = -1;    ///< that pair
};

/// What an answer is worth: every figure exact, the same for the same answer on every machine.
///
///   lost = 3/4 of the move charge + 1/4 of the broken weights + the whole weight of broken lines
///
/// The move charge counts, weight by weight, the fewest cards that must move so that all rules of at least that weight
/// hold: with should-rules of 1 and must-rules of 3 a card that has to move costs 1, and 3 in all if it has to for a
/// must-rule. One card that breaks one rule costs that rule's weight; one card that breaks four costs little more. A rule
/// that speaks of many pairs adds at most its weight to the charge, so that nobody loses more than was wanted.
/// Worked figures: tests/rules/order_marks_test.cpp.
struct OrderMarks {
    std::int64_t wanted = 0;            ///< weights of all rules of the task
    std::int64_t move_charge = 0;
    std::int64_t broken_weight = 0;     ///< weights of broken rules, lines left out
    std::int64_t line_weight = 0;       ///< weights of broken lines
    Quarters lost;
    Fraction score{1, 1};               ///< 1 when nothing is wanted
    bool is_passed = true;              ///< no critical rule broken, no critical card left out
    std::vector<BrokenRule> broken;     ///< by rule
    std::vector<int> consequences;      ///< rules that name a missing card but are not weighed again
    std::vector<int> critical_rules;
    std::vector<int> critical_missing;  ///< cards
    std::vector<MoveLevel> levels;      ///< lightest first
    std::vector<MoveLine> lines;        ///< their points add up to move_charge
    std::vector<int> could_move;        ///< every card that stands in some smallest set, all rules asked
    int moves = 0;                      ///< fewest moves for all rules together

    int moves_at(int weight) const;     ///< fewest moves for the rules of at least `weight`
};

/// Insists that every card is laid at most once and that numbers lie in the task; broken_lines name rules without pairs.
OrderMarks mark_order(const OrderBook& book, const OrderAnswer& answer);

/// The sheet for the class: result first, then one line a charge; columns aligned.
std::vector<std::string> print_out(const OrderBook& book, const OrderMarks& marks);

}
