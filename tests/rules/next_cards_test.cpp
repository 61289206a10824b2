#include "rules/next_cards.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

/// a before b before c by two rules, d free.
OrderBook chain()
{
    OrderTask task;
    for (const char* id : {"a", "b", "c", "d"}) task.cards.push_back({id});
    task.rules = {{"light", "a before b", 1}, {"heavy", "b before c", 3}, {"heavier", "a before b, really", 5}};
    task.pairs = {{0, 0, 1}, {2, 0, 1}, {1, 1, 2}};
    return OrderBook::build(std::move(task)).value();
}

}

TEST_CASE("a card may come next when nothing that has to stand before it is still to be done")
{
    const OrderBook book = chain();
    CHECK_FALSE(hindrance(book, {false, false, false, false}, 0));
    CHECK_FALSE(hindrance(book, {false, false, false, false}, 3));
    CHECK_FALSE(hindrance(book, {true, false, false, false}, 1));
    CHECK_FALSE(hindrance(book, {true, true, false, false}, 2));
}

TEST_CASE("what hinders a card is told with the heaviest rule that asks it")
{
    const OrderBook book = chain();
    const auto hindered = hindrance(book, {false, false, false, false}, 1);
    REQUIRE(hindered);
    CHECK(hindered->before == 0);
    CHECK(hindered->rule == 2);
}

TEST_CASE("a card left out long ago still hinders what follows from it")
{
    const OrderBook book = chain();
    const auto hindered = hindrance(book, {false, true, false, false}, 2);
    REQUIRE(hindered);
    CHECK(hindered->before == 0);
    CHECK(hindered->rule == -1);
}

TEST_CASE("only a card that is still to be done can come next")
{
    const OrderBook book = chain();
    CHECK_THROWS(hindrance(book, {true, false, false, false}, 0));
    CHECK_THROWS(hindrance(book, {true}, 1));
}
