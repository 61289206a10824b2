#include "site/card_luck.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace flapdoor;
using namespace flapdoor::site;

TEST_CASE("a card's luck hangs on the card and not on what came before it")
{
    CardLuck plain, longer;
    longer.begin_card(7);
    for (int i = 0; i < 5; ++i) longer.next(Stream::walking);
    for (CardLuck* luck : {&plain, &longer}) luck->begin_card(42);
    for (int i = 0; i < 10; ++i) CHECK(plain.next(Stream::emission) == longer.next(Stream::emission));
}

TEST_CASE("one purpose more does not shift the luck of another")
{
    CardLuck plain, busy;
    plain.begin_card(42);
    busy.begin_card(42);
    busy.next(Stream::inspection);
    CHECK(plain.next(Stream::walking) == busy.next(Stream::walking));
}

TEST_CASE("numbers are not used twice, whether cards are alike or not")
{
    CardLuck luck;
    std::set<std::uint64_t> numbers;
    std::size_t asked = 0;
    for (const std::uint64_t key : {1ULL, 2ULL, 1ULL, 1ULL, 3ULL}) {
        luck.begin_card(key);
        for (int i = 0; i < 1000; ++i, ++asked) numbers.insert(luck.next(Stream::emission));
        CHECK(luck.count(Stream::emission) == 1000);
    }
    CHECK(numbers.size() == asked);
    CHECK(luck.begun().at(1) == 3);
}
