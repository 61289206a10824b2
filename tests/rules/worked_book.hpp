#pragma once

#include "rules/order_marks.hpp"

#include <string_view>

namespace flapdoor::rules {

/// The worked example of the scheme: nine cards, ten rules, weights 3 (must) and 1 (should).
/// S signs, C contents, F floor plastic, V vents, W dusty work, P fold plastic, H vacuum, M damp-wipe, I inspect.
inline OrderTask worked_task()
{
    OrderTask task;
    for (const char card : std::string_view("SCFVWPHMI")) task.cards.push_back({std::string(1, card), true, false});
    const auto add = [&](std::string id, char before, char after, int weight, bool is_critical, std::string text) {
        const auto index = [&](char card) { return static_cast<int>(std::string_view("SCFVWPHMI").find(card)); };
        task.pairs.push_back({static_cast<int>(task.rules.size()), index(before), index(after)});
        task.rules.push_back({std::move(id), std::move(text), weight, is_critical, false});
    };
    add("R1", 'S', 'C', 1, false, "signs before contents");
    add("R2", 'S', 'W', 3, false, "signs before work");
    add("R3", 'C', 'F', 1, false, "contents before floor plastic");
    add("R4", 'C', 'W', 3, false, "contents before work");
    add("R5", 'F', 'W', 3, true, "floor plastic before work");
    add("R6", 'V', 'W', 3, true, "vents sealed before work");
    add("R7", 'W', 'P', 3, false, "work before folding");
    add("R8", 'P', 'H', 3, false, "plastic out before vacuuming");
    add("R9", 'H', 'M', 3, false, "vacuum before damp-wipe");
    add("R10", 'M', 'I', 3, true, "damp-wipe before inspecting");
    return task;
}

inline OrderBook worked_book() { return OrderBook::build(worked_task()).value(); }

/// Cards by their one-letter ids, one after the other.
inline OrderAnswer letters(const OrderBook& book, std::string_view cards)
{
    OrderAnswer answer;
    for (const char letter : cards)
        for (int i = 0; i < book.card_count(); ++i)
            if (book.card(i).id == std::string(1, letter)) answer.slots.push_back({i});
    return answer;
}

/// A chain of cards a, b, c ... of equal weight.
inline OrderBook chain_book(int length, int weight)
{
    OrderTask task;
    for (int i = 0; i < length; ++i) task.cards.push_back({std::string(1, static_cast<char>('a' + i)), true, false});
    for (int i = 0; i + 1 < length; ++i) {
        task.rules.push_back({task.cards[static_cast<std::size_t>(i)].id + "<", "", weight, false, false});
        task.pairs.push_back({i, i, i + 1});
    }
    return OrderBook::build(std::move(task)).value();
}

}
