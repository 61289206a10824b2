#pragma once

#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"
#include "rules/order_task.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A card to be laid.
struct LayCard {
    rules::Marked id;
    Phrase text;

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required, About{"name inside the question"});
        visit("text", self.text, required, About{"what is done"});
    }
};

/// Cards of which each comes before the next. Orders that no rule asks for are free.
struct LayRule {
    std::vector<rules::Marked> order;
    Phrase told;
    int weight = 3;
    bool is_critical = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("order", self.order, required, About{"ids of cards, each before the next"});
        visit("told", self.told, required, About{"why, told to whoever broke it"});
        visit("weight", self.weight, Range{1, 100}, About{"3 for what is a must, 1 for what is advised"});
        visit("critical", self.is_critical, About{"breaking it leaves no points"});
    }
};

/// Any order that keeps the rules is right; what is off is marked by the fewest cards to move, as runs are (rules/order_marks).
struct PutInOrder {
    static constexpr std::string_view name = "put-in-order";
    std::vector<LayCard> cards;
    std::vector<LayRule> rules;

    static void fields(auto& self, auto&& visit)
    {
        visit("card", self.cards, required, About{"what is to be put in order"});
        visit("rule", self.rules, required, About{"what must come before what"});
    }
};

/// The cards and rules as the marking scheme takes them; refuses a circle, card by card.
Result<rules::OrderBook> order_book(const PutInOrder& asked);

/// Left-out cards are omissions; a card named twice counts where it stands first.
Mark mark(const PutInOrder& asked, const Response& response);

/// A right answer: of all, the one that keeps to the order of the file where the rules leave it free.
Laid one_right_order(const PutInOrder& asked);

void check(const PutInOrder& asked, const Place& where, Complaints& complaints);

}
