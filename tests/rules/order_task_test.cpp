#include "worked_book.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

std::string first_problem(OrderTask task)
{
    const auto book = OrderBook::build(std::move(task));
    return book ? std::string("none") : book.error().front().found;
}

}

TEST_CASE("a book with a cycle is refused and the cycle is named")
{
    OrderTask task = worked_task();
    task.rules.push_back({"R11", "inspect before work", 3, false, false});
    task.pairs.push_back({10, 8, 4});
    CHECK(first_problem(task) == "a cycle: W before P (R7), P before H (R8), H before M (R9), M before I (R10), I before W (R11)");
}

TEST_CASE("a card before itself is a cycle of one")
{
    OrderTask task;
    task.cards = {{"a", true, false}};
    task.rules = {{"r", "", 1, false, false}};
    task.pairs = {{0, 0, 0}};
    CHECK(first_problem(task) == "a cycle: a before a (r)");
}

TEST_CASE("what is wrong with a task is told all at once")
{
    OrderTask task;
    task.cards = {{"a", true, false}, {"a", true, false}};
    task.rules = {{"r", "", 0, false, false}, {"r", "", 1, false, false}};
    task.pairs = {{0, 0, 7}, {5, 0, 1}};
    task.forbidden = {{1, -1}};
    const auto book = OrderBook::build(task);
    REQUIRE_FALSE(book);
    CHECK(book.error().size() == 6);
}

TEST_CASE("a forbidden card takes no part in an order")
{
    OrderTask task = worked_task();
    task.rules.push_back({"never", "", 3, false, false});
    task.forbidden.push_back({10, 4});
    CHECK(first_problem(task) == "card \"W\" in both");
    task.forbidden = {{0, 4}};
    CHECK(first_problem(task) == "both in rule \"R1\"");
}

TEST_CASE("more cards than fit are refused")
{
    OrderTask task;
    for (int i = 0; i <= most_cards; ++i) task.cards.push_back({std::to_string(i), true, false});
    CHECK(first_problem(task) == "1025");
    task.cards.pop_back();
    CHECK(OrderBook::build(task));
}
