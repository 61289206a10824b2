#include "rules/nearest_order.hpp"

#include "core/philox.hpp"
#include "worked_book.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

std::string spelled(const OrderBook& book, const std::vector<PlacedCard>& cards)
{
    std::string word;
    for (const PlacedCard& placed : cards) word += (placed.is_moved ? "(" : "") + book.card(placed.card).id + (placed.is_moved ? ")" : "");
    return word;
}

std::string nearest(const OrderBook& book, std::string_view cards)
{
    const OrderAnswer answer = letters(book, cards);
    return spelled(book, nearest_order(book, answer, mark_order(book, answer)));
}

struct Numbers {
    Luck luck;
    std::uint64_t round = 0;
    std::uint32_t draw = 0;
    int below(int limit) { return static_cast<int>(luck.uniform(round, draw++) * limit); }
};

/// A book of up to 9 cards with random pairs that run forward in a hidden order; every rule may speak of several pairs.
OrderBook random_book(Numbers& numbers)
{
    const int cards = 2 + numbers.below(8);
    OrderTask task;
    std::vector<int> hidden(static_cast<std::size_t>(cards));
    for (int i = 0; i < cards; ++i) {
        task.cards.push_back({std::string(1, static_cast<char>('a' + i)), numbers.below(8) != 0, false});
        hidden[static_cast<std::size_t>(i)] = i;
    }
    for (std::size_t i = hidden.size(); i > 1; --i) std::swap(hidden[i - 1], hidden[static_cast<std::size_t>(numbers.below(static_cast<int>(i)))]);
    const int rules = 1 + numbers.below(8);
    for (int r = 0; r < rules; ++r) {
        task.rules.push_back({"r" + std::to_string(r), "", 1 + 2 * numbers.below(2), false, numbers.below(4) == 0});
        const int a = numbers.below(cards - 1);
        const int b = a + 1 + numbers.below(cards - a - 1);
        task.pairs.push_back({r, hidden[static_cast<std::size_t>(a)], hidden[static_cast<std::size_t>(b)]});
    }
    return OrderBook::build(task).value();
}

OrderAnswer random_answer(Numbers& numbers, int cards)
{
    std::vector<int> order;
    for (int i = 0; i < cards; ++i)
        if (numbers.below(10) != 0) order.push_back(i);
    for (std::size_t i = order.size(); i > 1; --i) std::swap(order[i - 1], order[static_cast<std::size_t>(numbers.below(static_cast<int>(i)))]);
    OrderAnswer answer;
    for (const int card : order) {
        if (answer.slots.empty() || numbers.below(4) != 0) answer.slots.emplace_back();
        answer.slots.back().push_back(card);
    }
    return answer;
}

}

TEST_CASE("the nearest legal order leaves all cards but the fewest where they are")
{
    const OrderBook book = worked_book();
    CHECK(nearest(book, "SVCFWPHMI") == "SVCFWPHMI");
    CHECK(nearest(book, "WSCFVPHMI") == "SCFV(W)PHMI");     // work first: one card, as early as the rules allow
    CHECK(nearest(book, "CFVWPHMIS") == "(S)CFVWPHMI");     // signs last: just before what needs them
    CHECK(nearest(book, "ISCFVWPHM") == "SCFVWPHM(I)");
    const std::string swapped = nearest(book, "SCFVWPMHI");
    CHECK((swapped == "SCFVWP(H)MI" || swapped == "SCFVWPH(M)I"));
}

TEST_CASE("a missing card is put in just before what needs it")
{
    const OrderBook book = worked_book();
    CHECK(nearest(book, "SCFVWPMI") == "SCFVWP(H)MI");
    CHECK(nearest(book, "SCFVWPHM") == "SCFVWPHM(I)");
}

TEST_CASE("a forbidden card is left out of the legal order")
{
    OrderTask task = worked_task();
    task.cards.push_back({"T", false, false});
    task.rules.push_back({"N1", "never a torch", 3, true, false});
    task.forbidden.push_back({10, 9});
    const OrderBook book = OrderBook::build(task).value();
    CHECK(nearest(book, "SCFVTWPHMI") == "SCFVWPHMI");
}

TEST_CASE("of random books and answers the order is legal, complete, and moves as few cards as the marks say", "[property]")
{
    Numbers numbers{{77, Stream::parameter}};
    for (numbers.round = 0; numbers.round < 4000; ++numbers.round) {
        numbers.draw = 0;
        const OrderBook book = random_book(numbers);
        const OrderAnswer answer = random_answer(numbers, book.card_count());
        const OrderMarks marks = mark_order(book, answer);
        const std::vector<PlacedCard> placed = nearest_order(book, answer, marks);
        CAPTURE(numbers.round);
        std::vector<int> position(static_cast<std::size_t>(book.card_count()), -1);
        std::vector<int> slot(position.size(), -1);
        for (std::size_t s = 0; s < answer.slots.size(); ++s)
            for (const int card : answer.slots[s]) slot[static_cast<std::size_t>(card)] = static_cast<int>(s);
        int moved = 0, last_slot = -1;
        for (std::size_t i = 0; i < placed.size(); ++i) {
            const auto card = static_cast<std::size_t>(placed[i].card);
            REQUIRE(position[card] == -1);
            position[card] = static_cast<int>(i);
            moved += placed[i].is_moved;
            if (placed[i].is_moved) continue;
            REQUIRE(slot[card] >= last_slot);       // what stays, stays in order
            last_slot = slot[card];
        }
        REQUIRE(moved == marks.moves);
        for (int card = 0; card < book.card_count(); ++card) {
            const bool is_wanted = slot[static_cast<std::size_t>(card)] >= 0 || book.card(card).is_required;
            REQUIRE((position[static_cast<std::size_t>(card)] >= 0) == is_wanted);
        }
        for (const OrderPair& pair : book.task().pairs) {
            const int a = position[static_cast<std::size_t>(pair.before)];
            const int b = position[static_cast<std::size_t>(pair.after)];
            if (a >= 0 && b >= 0) REQUIRE(a < b);
        }
    }
}
