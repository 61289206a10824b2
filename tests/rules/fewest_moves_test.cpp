#include "rules/fewest_moves.hpp"
#include "rules/precedence.hpp"

#include "core/philox.hpp"
#include "worked_book.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <bit>
#include <numeric>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

/// Small seeded choices, the same on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : luck_{seed, Stream::parameter} {}
    int below(int n) { return static_cast<int>(luck_.uniform(next_++, 0) * n); }

private:
    Luck luck_;
    std::uint64_t next_ = 0;
};

std::vector<int> shuffled(int n, Dice& dice)
{
    std::vector<int> cards(static_cast<std::size_t>(n));
    std::iota(cards.begin(), cards.end(), 0);
    for (int i = n - 1; i > 0; --i) std::swap(cards[static_cast<std::size_t>(i)], cards[static_cast<std::size_t>(dice.below(i + 1))]);
    return cards;
}

/// A random book without cycles: every rule runs forward in some hidden order.
OrderTask random_task(int n, int rules, Dice& dice, bool has_many_pairs)
{
    static constexpr std::array<int, 4> weights{1, 3, 3, 7};
    OrderTask task;
    for (int i = 0; i < n; ++i) task.cards.push_back({"c" + std::to_string(i), true, false});
    const std::vector<int> hidden = shuffled(n, dice);
    for (int r = 0; r < rules; ++r) {
        task.rules.push_back({"r" + std::to_string(r), "", weights[static_cast<std::size_t>(dice.below(4))], dice.below(6) == 0, false});
        for (int p = has_many_pairs ? dice.below(3) : 0; p >= 0; --p) {
            const int a = dice.below(n - 1);
            const int b = a + 1 + dice.below(n - 1 - a);
            task.pairs.push_back({r, hidden[static_cast<std::size_t>(a)], hidden[static_cast<std::size_t>(b)]});
        }
    }
    return task;
}

/// Can the rules of at least `weight` be kept when the chosen cards keep the order they were laid in? By peeling off
/// cards that nothing stands before; no closure, no matching.
bool can_stay(const OrderTask& task, const std::vector<int>& laid, unsigned staying, int weight)
{
    const int n = static_cast<int>(task.cards.size());
    BitMatrix edges(n);
    for (const OrderPair& pair : task.pairs)
        if (task.rules[static_cast<std::size_t>(pair.rule)].weight >= weight) edges.set(pair.before, pair.after);
    int last = -1;
    for (const int card : laid)
        if ((staying >> card & 1U) != 0) {
            if (last >= 0) edges.set(last, card);
            last = card;
        }
    unsigned left = (1U << n) - 1U;
    for (bool is_peeling = true; is_peeling;) {
        is_peeling = false;
        for (int b = 0; b < n; ++b) {
            if ((left >> b & 1U) == 0) continue;
            bool is_free = true;
            for (int a = 0; a < n; ++a) is_free = is_free && ((left >> a & 1U) == 0 || !edges.at(a, b));
            if (is_free) {
                left &= ~(1U << b);
                is_peeling = true;
            }
        }
    }
    return left == 0;
}

int fewest_by_subsets(const OrderTask& task, const std::vector<int>& laid, int weight)
{
    const int n = static_cast<int>(task.cards.size());
    int best = n;
    for (unsigned staying = 0; staying < (1U << n); ++staying) {
        const int moved = n - std::popcount(staying);
        if (moved < best && can_stay(task, laid, staying, weight)) best = moved;
    }
    return best;
}

std::int64_t charge_by_subsets(const OrderTask& task, const std::vector<int>& laid)
{
    std::int64_t charge = 0;
    int below = 0;
    for (const int weight : {1, 3, 7}) {
        charge += std::int64_t{weight - below} * fewest_by_subsets(task, laid, weight);
        below = weight;
    }
    return charge;
}

bool is_broken(const OrderPair& pair, const std::vector<int>& laid)
{
    return std::find(laid.begin(), laid.end(), pair.after) < std::find(laid.begin(), laid.end(), pair.before);
}

}

TEST_CASE("fewest moves and the charge equal those found by trying every set of cards", "[property]")
{
    Dice dice(11);
    for (int round = 0; round < 3000; ++round) {
        const int n = 2 + dice.below(6) + (round % 50 == 0 ? 2 : 0);
        const OrderTask task = random_task(n, 1 + dice.below(2 * n), dice, false);
        const OrderBook book = OrderBook::build(task).value();
        const std::vector<int> laid = shuffled(n, dice);
        const OrderMarks marks = mark_order(book, one_by_one(laid));
        CAPTURE(round);
        REQUIRE(marks.moves == fewest_by_subsets(task, laid, 1));
        REQUIRE(marks.move_charge == charge_by_subsets(task, laid));
        std::int64_t broken = 0;
        for (const OrderPair& pair : task.pairs)
            if (is_broken(pair, laid)) broken += task.rules[static_cast<std::size_t>(pair.rule)].weight;
        REQUIRE(marks.broken_weight == broken);
        REQUIRE(marks.lost.count == 3 * marks.move_charge + broken);
    }
}

TEST_CASE("the named cards are a smallest set, and could-move names exactly the cards of smallest sets", "[property]")
{
    Dice dice(12);
    for (int round = 0; round < 1000; ++round) {
        const int n = 2 + dice.below(6);
        const OrderTask task = random_task(n, 1 + dice.below(2 * n), dice, false);
        const OrderBook book = OrderBook::build(task).value();
        const std::vector<int> laid = shuffled(n, dice);
        const OrderMarks marks = mark_order(book, one_by_one(laid));
        CAPTURE(round);
        for (const MoveLevel& level : marks.levels) {
            unsigned staying = (1U << n) - 1U;
            for (const int card : level.cards) staying &= ~(1U << card);
            REQUIRE(static_cast<int>(level.cards.size()) == level.moves);
            REQUIRE(can_stay(task, laid, staying, level.weight));
        }
        unsigned could = 0;
        for (unsigned staying = 0; staying < (1U << n); ++staying)
            if (n - std::popcount(staying) == marks.moves && can_stay(task, laid, staying, 1)) could |= ~staying & ((1U << n) - 1U);
        unsigned said = 0;
        for (const int card : marks.could_move) said |= 1U << card;
        REQUIRE(said == could);
        std::int64_t points = 0;
        for (const MoveLine& line : marks.lines) points += line.points;
        REQUIRE(points == marks.move_charge);
    }
}

TEST_CASE("no answer loses more than was wanted, whatever is missing and however many pairs a rule has", "[property]")
{
    Dice dice(13);
    for (int round = 0; round < 6000; ++round) {
        const int n = 2 + dice.below(9);
        const OrderBook book = OrderBook::build(random_task(n, 1 + dice.below(2 * n), dice, round % 2 == 0)).value();
        std::vector<int> laid = shuffled(n, dice);
        if (round % 3 == 0) laid.resize(static_cast<std::size_t>(dice.below(n + 1)));
        const OrderMarks marks = mark_order(book, one_by_one(laid));
        CAPTURE(round);
        REQUIRE(marks.move_charge <= marks.wanted);
        REQUIRE(marks.broken_weight <= marks.wanted);
        REQUIRE(marks.score.numerator >= 0);
        REQUIRE_FALSE(is_less(Fraction{1, 1}, marks.score));
        std::int64_t points = 0;
        for (const MoveLine& line : marks.lines) points += line.points;
        REQUIRE(points == marks.move_charge);
    }
}

TEST_CASE("missing cards are charged in full as long as rules are left to name them", "[property]")
{
    Dice dice(14);
    for (int round = 0; round < 3000; ++round) {
        const int n = 3 + dice.below(5);
        const OrderTask task = random_task(n, n + dice.below(2 * n), dice, false);
        const OrderBook book = OrderBook::build(task).value();
        std::vector<int> laid = shuffled(n, dice);
        laid.pop_back();
        const OrderMarks marks = mark_order(book, one_by_one(laid));
        // With one pair a rule the ceiling on charges never binds: level charges are moves times weight steps.
        std::int64_t charge = 0;
        int below = 0;
        for (const MoveLevel& level : marks.levels) {
            charge += std::int64_t{level.weight - below} * level.moves;
            below = level.weight;
        }
        for (const MoveLine& line : marks.lines)
            if (line.how == Breach::left_out && line.rule < 0) charge -= line.points;
        const bool is_named = std::none_of(marks.lines.begin(), marks.lines.end(), [](const MoveLine& line) { return line.how == Breach::left_out && line.rule < 0; });
        CAPTURE(round);
        if (is_named) REQUIRE(marks.move_charge == charge);
    }
}

TEST_CASE("any order that keeps every rule gets full marks", "[property]")
{
    Dice dice(15);
    for (int round = 0; round < 2000; ++round) {
        const int n = 2 + dice.below(29);
        const OrderTask task = random_task(n, 1 + dice.below(2 * n), dice, true);
        const OrderBook book = OrderBook::build(task).value();
        const BitMatrix& before = book.levels().front().before;
        std::vector<int> legal;   // draw any card that nothing unlaid stands before
        std::vector<char> is_laid(static_cast<std::size_t>(n), 0);
        while (static_cast<int>(legal.size()) < n) {
            const int card = dice.below(n);
            bool is_free = is_laid[static_cast<std::size_t>(card)] == 0;
            for (int a = 0; a < n; ++a) is_free = is_free && (is_laid[static_cast<std::size_t>(a)] != 0 || !before.at(a, card));
            if (!is_free) continue;
            is_laid[static_cast<std::size_t>(card)] = 1;
            legal.push_back(card);
        }
        const OrderMarks marks = mark_order(book, one_by_one(legal));
        REQUIRE(marks.score == Fraction{1, 1});
        REQUIRE(marks.moves == 0);
        REQUIRE(marks.is_passed);
    }
}

TEST_CASE("swapping two neighbors that stand the wrong way round never lowers the score", "[property]")
{
    Dice dice(16);
    int repaired = 0;
    for (int round = 0; round < 3000; ++round) {
        const int n = 2 + dice.below(11);
        const OrderTask task = random_task(n, 1 + dice.below(2 * n), dice, false);
        const OrderBook book = OrderBook::build(task).value();
        std::vector<int> laid = shuffled(n, dice);
        const Fraction was = mark_order(book, one_by_one(laid)).score;
        for (std::size_t i = 0; i + 1 < laid.size(); ++i) {
            if (!book.levels().front().before.at(laid[i + 1], laid[i])) continue;
            std::swap(laid[i], laid[i + 1]);
            REQUIRE_FALSE(is_less(mark_order(book, one_by_one(laid)).score, was));
            std::swap(laid[i], laid[i + 1]);
            ++repaired;
        }
    }
    CHECK(repaired > 1000);
}

TEST_CASE("the score depends only on which pairs are broken", "[property]")
{
    Dice dice(17);
    int compared = 0;
    for (int round = 0; round < 3000; ++round) {
        const int n = 3 + dice.below(8);
        const OrderBook book = OrderBook::build(random_task(n, 1 + dice.below(n), dice, false)).value();
        const BitMatrix& before = book.levels().front().before;
        std::vector<int> laid = shuffled(n, dice);
        const OrderMarks was = mark_order(book, one_by_one(laid));
        for (std::size_t i = 0; i + 1 < laid.size(); ++i) {
            if (before.at(laid[i], laid[i + 1]) || before.at(laid[i + 1], laid[i])) continue;
            std::swap(laid[i], laid[i + 1]);   // free neighbors: the broken pairs stay the same
            const OrderMarks is = mark_order(book, one_by_one(laid));
            REQUIRE(is.score == was.score);
            REQUIRE(is.levels.front().cards == was.levels.front().cards);
            ++compared;
        }
    }
    CHECK(compared > 1000);
}

TEST_CASE("shuffled answers to the worked book score about one half")
{
    const OrderBook book = worked_book();
    Dice dice(18);
    double score = 0.0, moves = 0.0;
    int good = 0;
    constexpr int rounds = 40000;
    for (int round = 0; round < rounds; ++round) {
        const OrderMarks marks = mark_order(book, one_by_one(shuffled(9, dice)));
        score += 100.0 * value(marks.score) / rounds;
        moves += static_cast<double>(marks.moves) / rounds;
        good += marks.is_passed && !is_less(marks.score, Fraction{4, 5});
    }
    CHECK(score == Approx(51.0).margin(0.25));   // mean of 40 000, standard deviation 9.8
    CHECK(moves == Approx(4.63).margin(0.02));
    CHECK(good < rounds / 200);
    CHECK(good > rounds / 2000);
}

TEST_CASE("for a total order the fewest moves are the cards outside a longest rising run", "[property]")
{
    Dice dice(19);
    for (int round = 0; round < 200; ++round) {
        const int n = 2 + dice.below(60);
        OrderTask task;
        for (int i = 0; i < n; ++i) task.cards.push_back({std::to_string(i), true, false});
        for (int i = 0; i + 1 < n; ++i) {
            task.rules.push_back({std::to_string(i), "", 1, false, false});
            task.pairs.push_back({i, i, i + 1});
        }
        const std::vector<int> laid = shuffled(n, dice);
        std::vector<int> ends;   // patience piles
        for (const int card : laid) {
            const auto pile = std::lower_bound(ends.begin(), ends.end(), card);
            if (pile == ends.end()) ends.push_back(card);
            else *pile = card;
        }
        REQUIRE(mark_order(OrderBook::build(task).value(), one_by_one(laid)).moves == n - static_cast<int>(ends.size()));
    }
}

TEST_CASE("a book of 256 cards is marked beyond one machine word")
{
    constexpr int n = 256;
    OrderTask task;
    for (int i = 0; i < n; ++i) task.cards.push_back({std::to_string(i), true, false});
    for (int i = 0; i + 1 < n; ++i) {
        task.rules.push_back({std::to_string(i), "", 1, false, false});
        task.pairs.push_back({i, i, i + 1});
    }
    const OrderBook book = OrderBook::build(task).value();
    std::vector<int> reversed(n);
    for (int i = 0; i < n; ++i) reversed[static_cast<std::size_t>(i)] = n - 1 - i;
    const OrderMarks marks = mark_order(book, one_by_one(reversed));
    CHECK(marks.moves == n - 1);
    CHECK(marks.score == Fraction{0, 1});
}

TEST_CASE("a cycle is found with its cards in order, and only when there is one", "[property]")
{
    Dice dice(20);
    int cycles = 0;
    for (int round = 0; round < 2000; ++round) {
        const int n = 1 + dice.below(90);
        BitMatrix before(n);
        for (int e = dice.below(2 * n); e > 0; --e) {
            const int a = dice.below(n);
            const int b = dice.below(n);
            before.set(a, b);
        }
        const std::vector<int> cycle = find_cycle(before);
        const BitMatrix all = closure(before);
        bool has_cycle = false;
        for (int a = 0; a < n; ++a) has_cycle = has_cycle || all.at(a, a);
        REQUIRE(has_cycle == !cycle.empty());
        for (std::size_t i = 0; i < cycle.size(); ++i) REQUIRE(before.at(cycle[i], cycle[(i + 1) % cycle.size()]));
        cycles += has_cycle;
    }
    CHECK(cycles > 100);
}
