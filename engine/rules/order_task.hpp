#pragma once

#include "core/result.hpp"
#include "rules/bit_matrix.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

/// A thing to be put in order. Cards are spoken of by their position in the task, from 0.
struct OrderCard {
    std::string id;
    bool is_required = true;            ///< leaving it out is an omission
    bool is_critical_to_leave_out = false;
};

/// A named rule with its weight. It may ask for an order (pairs name it), forbid a card, or stand for anything else
/// that can be kept or broken (a ledger line).
struct WeighedRule {
    std::string id;
    std::string text;                   ///< a few words: "signs before work"
    int weight = 1;                     ///< 1 to 1000
    bool is_critical = false;           ///< breaking it fails the answer, whatever the points
    bool same_time_keeps_it = false;    ///< "no later than": cards in one time slot keep it
};

/// `rule` asks that card `before` ends before card `after` begins. One rule may ask it of many pairs of cards.
struct OrderPair {
    int rule = 0;
    int before = 0;
    int after = 0;

    friend auto operator<=>(const OrderPair&, const OrderPair&) = default;
};

/// `rule` is broken as soon as `card` is placed at all.
struct ForbiddenCard {
    int rule = 0;
    int card = 0;
};

/// What is asked, before any answer: cards and the rules that are active for them.
struct OrderTask {
    std::vector<OrderCard> cards;
    std::vector<WeighedRule> rules;
    std::vector<OrderPair> pairs;
    std::vector<ForbiddenCard> forbidden;
};

inline constexpr int most_cards = 1024;
inline constexpr int greatest_weight = 1000;

/// A checked task with what follows from it: for each weight that occurs, the order that the rules of at least that
/// weight imply.
class OrderBook {
public:
    /// Refuses dangling numbers, weights out of range, duplicate ids and cycles; a cycle is named card by card.
    [[nodiscard]] static Result<OrderBook> build(OrderTask task);

    /// Rules of at least `weight` and what they imply together.
    struct Level {
        int weight;
        BitMatrix before;           ///< a must stand before b
        BitMatrix strictly_before;  ///< the same, and one time slot is not enough
    };

    const OrderTask& task() const { return task_; }
    const std::vector<Level>& levels() const { return levels_; }   ///< lightest first; never empty unless there are no pairs
    int card_count() const { return static_cast<int>(task_.cards.size()); }
    const OrderCard& card(int index) const { return task_.cards[static_cast<std::size_t>(index)]; }
    const WeighedRule& rule(int index) const { return task_.rules[static_cast<std::size_t>(index)]; }

private:
    explicit OrderBook(OrderTask task);

    OrderTask task_;
    std::vector<Level> levels_;
};

}
