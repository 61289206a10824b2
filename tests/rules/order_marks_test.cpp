#include "worked_book.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

std::string broken_ids(const OrderBook& book, const OrderMarks& marks)
{
    std::string ids;
    for (const BrokenRule& broken : marks.broken) {
        const WeighedRule& rule = book.rule(broken.rule);
        ids += (ids.empty() ? "" : " ") + rule.id + (rule.is_critical ? "!" : "");
    }
    return ids;
}

double percent(Fraction share) { return 100.0 * value(share); }

OrderMarks mark_letters(const OrderBook& book, std::string_view cards) { return mark_order(book, letters(book, cards)); }

}

TEST_CASE("ten worked answers get the moves, broken rules, percentages and gate that were worked out for them")
{
    struct Row {
        std::string_view answer;
        int moves_all, moves_must;
        std::string_view broken;
        double plain, ledger;
        bool is_passed;
    };
    const std::vector<Row> rows{
        {"SVCFWPHMI", 0, 0, "", 100, 100, true},
        {"SCFVWMPHI", 1, 1, "R9", 88.461538, 88.461538, true},
        {"WSCFVPHMI", 1, 1, "R2 R4 R5! R6!", 53.846154, 79.807692, false},
        {"SCFVWPMHI", 1, 1, "R9", 88.461538, 88.461538, true},
        {"IMHPWVFCS", 7, 5, "R1 R2 R3 R4 R5! R6! R7 R8 R9 R10!", 0, 25.961538, false},
        {"CFVSWPHMI", 1, 0, "R1", 96.153846, 96.153846, true},
        {"WPHMISCFV", 4, 4, "R2 R4 R5! R6!", 53.846154, 53.846154, false},
        {"ISCFVWPHM", 1, 1, "R10!", 88.461538, 88.461538, false},
        {"CFVWPHMIS", 1, 1, "R1 R2", 84.615385, 87.500000, true},
        {"SFCVWPMHI", 2, 1, "R3 R9", 84.615385, 84.615385, true},
    };
    const OrderBook book = worked_book();
    for (const Row& row : rows) {
        CAPTURE(row.answer);
        const OrderMarks marks = mark_letters(book, row.answer);
        CHECK(marks.wanted == 26);
        CHECK(marks.moves == row.moves_all);
        CHECK(marks.moves_at(1) == row.moves_all);
        CHECK(marks.moves_at(3) == row.moves_must);
        CHECK(broken_ids(book, marks) == row.broken);
        CHECK(100.0 * static_cast<double>(marks.wanted - marks.broken_weight) / static_cast<double>(marks.wanted) == Approx(row.plain).margin(5e-7));
        CHECK(percent(marks.score) == Approx(row.ledger).margin(5e-7));
        CHECK(marks.is_passed == row.is_passed);
    }
}

TEST_CASE("scores are exact fractions")
{
    CHECK(mark_letters(worked_book(), "WSCFVPHMI").score == Fraction{83, 104});
    CHECK(mark_letters(worked_book(), "IMHPWVFCS").score == Fraction{27, 104});
    CHECK(mark_letters(worked_book(), "SCFVWPHMI").score == Fraction{1, 1});
}

TEST_CASE("the worked book implies 33 of 36 pairs and has four valid orders")
{
    const OrderBook book = worked_book();
    const BitMatrix& before = book.levels().front().before;
    int pairs = 0;
    for (int a = 0; a < 9; ++a)
        for (int b = 0; b < 9; ++b) pairs += before.at(a, b);
    CHECK(pairs == 33);

    std::vector<int> cards{0, 1, 2, 3, 4, 5, 6, 7, 8};
    int valid = 0;
    int no_critical = 0;
    std::int64_t kept_weight = 0;
    int orders = 0;
    do {
        ++orders;
        std::array<int, 9> position{};
        for (int i = 0; i < 9; ++i) position[static_cast<std::size_t>(cards[static_cast<std::size_t>(i)])] = i;
        bool is_valid = true, is_critical = false;
        for (const OrderPair& pair : book.task().pairs) {
            const bool is_kept = position[static_cast<std::size_t>(pair.before)] < position[static_cast<std::size_t>(pair.after)];
            is_valid = is_valid && is_kept;
            is_critical = is_critical || (!is_kept && book.rule(pair.rule).is_critical);
            kept_weight += is_kept ? book.rule(pair.rule).weight : 0;
        }
        if (is_valid) CHECK(mark_order(book, one_by_one(cards)).score == Fraction{1, 1});
        valid += is_valid;
        no_critical += !is_critical;
    } while (std::next_permutation(cards.begin(), cards.end()));
    CHECK(orders == 362880);
    CHECK(valid == 4);
    CHECK(no_critical * 6 == orders);                       // one shuffled answer in six breaks nothing critical
    CHECK(kept_weight * 2 == std::int64_t{26} * orders);    // the plain share of luck is exactly one half
}

TEST_CASE("the print-out of the answer that starts with the work names the card and the four rules")
{
    const OrderBook book = worked_book();
    const std::vector<std::string> expected{
        "Wanted 26 points, lost 5.25 -> 20.75 of 26 = 79.8 %.   NOT PASSED: critical R5, R6.",
        " card W must move (heaviest broken pair F before W, R5!)      3/4 * 3 = 2.25",
        " rule R2  signs before work                                   1/4 * 3 = 0.75",
        " rule R4  contents before work                                1/4 * 3 = 0.75",
        " rule R5! floor plastic before work                           1/4 * 3 = 0.75",
        " rule R6! vents sealed before work                            1/4 * 3 = 0.75",
        "Fewest cards to move: 1 (W).",
    };
    CHECK(print_out(book, mark_letters(book, "WSCFVPHMI")) == expected);
}

TEST_CASE("where either of two cards could move, both are said")
{
    const OrderBook book = worked_book();
    const OrderMarks marks = mark_letters(book, "SCFVWPMHI");
    CHECK(marks.could_move == std::vector<int>{6, 7});
    CHECK(print_out(book, marks).back() == "Fewest cards to move: 1 (H or M).");
}

TEST_CASE("a chain of six loses by the cards that must move, not by the rules that happen to break")
{
    const OrderBook book = chain_book(6, 3);
    const auto row = [&](std::string_view cards, int moves, Fraction score) {
        const OrderMarks marks = mark_letters(book, cards);
        CAPTURE(cards);
        CHECK(marks.moves == moves);
        CHECK(marks.score == score);
    };
    row("defabc", 3, {1, 2});
    row("fabcde", 1, {4, 5});
    row("bcdefa", 1, {4, 5});
    row("fedcba", 5, {0, 1});
}

TEST_CASE("two independent chains may be mixed in any way")
{
    OrderTask task;
    for (const char card : std::string_view("abcxyz")) task.cards.push_back({std::string(1, card), true, false});
    for (const auto& [id, a, b] : {std::tuple{"ab", 0, 1}, std::tuple{"bc", 1, 2}, std::tuple{"xy", 3, 4}, std::tuple{"yz", 4, 5}}) {
        task.pairs.push_back({static_cast<int>(task.rules.size()), a, b});
        task.rules.push_back({id, "", 3, false, false});
    }
    const OrderBook book = OrderBook::build(task).value();
    CHECK(mark_letters(book, "xyzabc").score == Fraction{1, 1});
}

TEST_CASE("a card that must move for a must-rule costs three, for a should-rule one")
{
    OrderTask task;
    task.cards = {{"a", true, false}, {"b", true, false}, {"c", true, false}};
    task.rules = {{"must", "", 3, false, false}, {"should", "", 1, false, false}};
    task.pairs = {{0, 0, 1}, {1, 1, 2}};
    const OrderBook book = OrderBook::build(task).value();
    CHECK(mark_letters(book, "bac").lost == whole_points(3));
    CHECK(mark_letters(book, "acb").lost == whole_points(1));
    CHECK(mark_letters(book, "cba").lost == whole_points(4));
    CHECK(mark_letters(book, "cba").move_charge == 4);
}

TEST_CASE("a missing card costs the heaviest rule that names it and one move")
{
    const OrderBook book = worked_book();
    const OrderMarks marks = mark_letters(book, "SCFWPHMI");    // V left out; R6 alone names it
    CHECK(marks.lost == whole_points(3));
    CHECK(marks.moves == 1);
    CHECK(broken_ids(book, marks) == "R6!");
    CHECK(marks.is_passed);                                     // the card itself is not flagged

    const OrderMarks no_contents = mark_letters(book, "SFVWPHMI");  // C: R1, R3 weigh 1, R4 weighs 3
    CHECK(broken_ids(book, no_contents) == "R4");
    CHECK(no_contents.lost == whole_points(3));
    CHECK(no_contents.consequences == std::vector<int>{0, 2});
}

TEST_CASE("leaving out a flagged card is critical")
{
    OrderTask task = worked_task();
    task.cards[2].is_critical_to_leave_out = true;
    const OrderBook book = OrderBook::build(task).value();
    const OrderMarks marks = mark_letters(book, "SCVWPHMI");
    CHECK_FALSE(marks.is_passed);
    CHECK(marks.critical_missing == std::vector<int>{2});
    CHECK(print_out(book, marks).front().find("NOT PASSED: critical F left out.") != std::string::npos);
}

TEST_CASE("order is still asked through a missing card")
{
    const OrderBook book = chain_book(3, 3);
    const OrderMarks marks = mark_letters(book, "ca");   // b is missing, yet a must stand before c
    CHECK(marks.moves == 2);
    CHECK(marks.move_charge == 6);
    CHECK(marks.broken_weight == 3);                      // the other named rule stays a consequence
    CHECK(marks.lost == Quarters{3 * 6 + 3});
}

TEST_CASE("two missing cards do not both pay for the one rule between them")
{
    const OrderBook book = chain_book(2, 3);
    const OrderMarks marks = mark_order(book, {});
    CHECK(marks.lost == whole_points(3));
    CHECK(marks.moves == 2);
    CHECK(marks.score == Fraction{0, 1});
}

TEST_CASE("an optional card may be left out for nothing")
{
    OrderTask task = worked_task();
    task.cards[3].is_required = false;
    const OrderBook book = OrderBook::build(task).value();
    CHECK(mark_letters(book, "SCFWPHMI").score == Fraction{1, 1});
    CHECK(mark_letters(book, "SCFWVPHMI").lost == whole_points(3));
}

TEST_CASE("a forbidden card costs its own rule and one move")
{
    OrderTask task = worked_task();
    task.cards.push_back({"T", false, false});
    task.rules.push_back({"N1", "never a torch", 3, true, false});
    task.forbidden.push_back({10, 9});
    const OrderBook book = OrderBook::build(task).value();
    const OrderMarks marks = mark_letters(book, "SCFVTWPHMI");
    CHECK(marks.wanted == 29);
    CHECK(marks.lost == whole_points(3));
    CHECK(marks.moves == 1);
    CHECK_FALSE(marks.is_passed);
    CHECK(print_out(book, marks)[1] == " card T must go (N1)                                          3/4 * 3 = 2.25");
    CHECK(mark_letters(book, "SCFVWPHMI").score == Fraction{1, 1});
}

TEST_CASE("a broken rule without an order costs its whole weight and no move")
{
    OrderTask task = worked_task();
    task.rules.push_back({"L1", "bag closed before leaving the room", 2, false, false});
    const OrderBook book = OrderBook::build(task).value();
    OrderAnswer answer = letters(book, "SCFVWPHMI");
    answer.broken_lines = {10};
    const OrderMarks marks = mark_order(book, answer);
    CHECK(marks.lost == whole_points(2));
    CHECK(marks.moves == 0);
    CHECK(marks.score == reduced(26, 28));
    CHECK(print_out(book, marks)[1].ends_with("4/4 * 2 = 2"));
}

TEST_CASE("cards in one time slot break a rule between them unless it says no later than")
{
    OrderTask task;
    task.cards = {{"a", true, false}, {"b", true, false}};
    task.rules = {{"must", "", 3, false, false}};
    task.pairs = {{0, 0, 1}};
    CHECK(mark_order(OrderBook::build(task).value(), {{{0, 1}}, {}}).lost == whole_points(3));
    task.rules[0].same_time_keeps_it = true;
    CHECK(mark_order(OrderBook::build(task).value(), {{{0, 1}}, {}}).lost == whole_points(0));
    CHECK(mark_order(OrderBook::build(task).value(), {{{1}, {0}}, {}}).lost == whole_points(3));
}

TEST_CASE("one slot is too few for a way that holds one strict rule")
{
    OrderTask task;
    task.cards = {{"a", true, false}, {"b", true, false}, {"c", true, false}};
    task.rules = {{"lax", "", 3, false, true}, {"strict", "", 3, false, false}};
    task.pairs = {{0, 0, 1}, {1, 1, 2}};
    const OrderBook book = OrderBook::build(task).value();
    CHECK(mark_order(book, {{{0, 1}, {2}}, {}}).moves == 0);
    CHECK(mark_order(book, {{{0, 1, 2}}, {}}).moves == 1);
    CHECK(mark_order(book, {{{0, 2}, {1}}, {}}).moves == 1);   // c with a: both b<c and, through b, a<c
}

TEST_CASE("one rule over several things costs at most its weight")
{
    OrderTask task;   // three sheets, each to be misted before it is folded
    for (const char* id : {"mist 1", "fold 1", "mist 2", "fold 2", "mist 3", "fold 3"}) task.cards.push_back({id, true, false});
    task.rules = {{"mist-before-fold", "", 3, false, false}, {"other", "", 3, false, false}};
    task.pairs = {{0, 0, 1}, {0, 2, 3}, {0, 4, 5}};
    const OrderBook book = OrderBook::build(task).value();
    const OrderMarks once = mark_order(book, one_by_one({1, 0, 2, 3, 4, 5}));
    const OrderMarks thrice = mark_order(book, one_by_one({1, 0, 3, 2, 5, 4}));
    CHECK(once.moves == 1);
    CHECK(thrice.moves == 3);
    CHECK(once.lost == whole_points(3));
    CHECK(thrice.lost == whole_points(3));
    CHECK(mark_order(book, one_by_one({0, 1})).lost == whole_points(3));    // four missing, one rule
}

TEST_CASE("nothing wanted, nothing lost")
{
    const OrderBook book = OrderBook::build({}).value();
    const OrderMarks marks = mark_order(book, {});
    CHECK(marks.score == Fraction{1, 1});
    CHECK(marks.is_passed);
}

TEST_CASE("an answer that lays a card twice or an unknown one is a bug of the caller")
{
    const OrderBook book = chain_book(3, 1);
    CHECK_THROWS_AS(mark_order(book, one_by_one({0, 0})), BrokenPromise);
    CHECK_THROWS_AS(mark_order(book, one_by_one({3})), BrokenPromise);
    CHECK_THROWS_AS(mark_order(book, (OrderAnswer{{{0}}, {0}})), BrokenPromise);   // an order rule is no line
}
