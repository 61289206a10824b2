#include "dust/ledger.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <map>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr SizeClass fine = SizeClass::um_2_5;

struct Traced {
    Ledger ledger;
    AccountId paint = ledger.open("paint film", Side::paint);
    AccountId before = ledger.open("there before", Side::before);
    AccountId air = ledger.open("air", Side::inside);
    AccountId floor = ledger.open("floor", Side::inside);
    AccountId sole = ledger.open("sole", Side::inside);
    AccountId hall = ledger.open("hall", Side::outside);
    AccountId bag = ledger.open("bag", Side::contained);
    std::map<AccountId, PerClass<Amount>> held;

    Traced()
    {
        ledger.trace();
        for (const AccountId id : {air, floor, sole, hall, bag}) held[id] = {};
    }

    Holding at(AccountId account, SizeClass k) { return {held[account][k], account}; }
    bool is_outside(AccountId account) const { return ledger.account(account).side == Side::outside; }
};

Amount crossed_by_source(const Ledger& ledger, int source)
{
    Amount sum;
    for (const SourceBook::Crossing& crossing : ledger.sources()->crossings())
        if (crossing.source == source) sum += crossing.amount;
    return sum;
}

}

TEST_CASE("whatever is moved, the sources of every account and every pathway add up to the ledger", "[property]")
{
    const bool holds = rc::check([] {
        Traced books;
        const std::vector<AccountId> places{books.air, books.floor, books.sole, books.hall, books.bag};
        const auto steps = *rc::gen::inRange(1, 60);
        for (int step = 0; step < steps; ++step) {
            books.ledger.begin_step(step);
            const SizeClass k = *rc::gen::element(SizeClass::um_2_5, SizeClass::um_80);
            const AccountId from = *rc::gen::elementOf(places);
            const AccountId to = *rc::gen::elementOf(places);
            switch (*rc::gen::inRange(0, 5)) {
                case 0: books.ledger.release(books.paint, books.at(books.air, k), k, {{*rc::gen::inRange(0, 100000)}, {*rc::gen::inRange(0, 999)}}); break;
                case 1: books.ledger.find(books.before, books.at(from, k), k, {{*rc::gen::inRange(0, 5000)}, {*rc::gen::inRange(0, 99)}}); break;
                case 2:
                    books.ledger.move_account(books.sole, books.is_outside(books.sole) ? Side::inside : Side::outside, Pathway::shoes);
                    break;
                default: {
                    if (from == to) break;
                    const Amount amount = part(books.held[from][k], *rc::gen::element(0.0, 0.001, 0.3, 0.77, 1.0));
                    const bool crosses = books.is_outside(from) != books.is_outside(to);
                    books.ledger.move(books.at(from, k), books.at(to, k), k, amount, !crosses ? Pathway::none : books.is_outside(to) ? Pathway::doorway : Pathway::recovered);
                }
            }
            RC_ASSERT(books.ledger.closes());
        }
        // All of a source that ever crossed is outside now.
        const std::vector<int>& sources = books.ledger.sources()->sources();
        for (std::size_t s = 0; s < sources.size(); ++s) {
            Amount outside;
            for (AccountId a = 0; a < books.ledger.accounts().size(); ++a)
                if (books.is_outside(a)) outside += books.ledger.sources()->held(a, s);
            RC_ASSERT(outside == crossed_by_source(books.ledger, sources[s]));
        }
    });
    CHECK(holds);
}

TEST_CASE("dust of two cards in one air leaves in proportion, told by step and pathway")
{
    Traced books;
    books.ledger.begin_step(3);
    books.ledger.release(books.paint, books.at(books.air, fine), fine, {{3000}, {30}});
    books.ledger.begin_step(5);
    books.ledger.release(books.paint, books.at(books.air, fine), fine, {{1000}, {10}});
    books.ledger.begin_step(8);
    books.ledger.move(books.at(books.air, fine), books.at(books.hall, fine), fine, {{400}, {4}}, Pathway::seam);
    const std::vector<SourceBook::Crossing> crossings = books.ledger.sources()->crossings();
    REQUIRE(crossings.size() == 2);
    CHECK(crossings[0].source == 3);
    CHECK(crossings[0].step == 8);
    CHECK(crossings[0].pathway == static_cast<std::size_t>(Pathway::seam));
    CHECK(crossings[0].amount == Amount{{300}, {3}});
    CHECK(crossings[1].source == 5);
    CHECK(crossings[1].amount == Amount{{100}, {1}});
}

TEST_CASE("old dust has no card, and takes no part in what crosses")
{
    Traced books;
    books.ledger.find(books.before, books.at(books.floor, fine), fine, {{1000}, {10}});
    books.ledger.begin_step(1);
    books.ledger.release(books.paint, books.at(books.floor, fine), fine, {{1000}, {10}});
    books.ledger.begin_step(2);
    books.ledger.move(books.at(books.floor, fine), books.at(books.hall, fine), fine, {{200}, {2}}, Pathway::doorway);
    CHECK(crossed_by_source(books.ledger, 1) == Amount{{100}, {1}});
    CHECK(books.ledger.closes());
}

TEST_CASE("more cards than there are sources share the last one and still add up")
{
    Traced books;
    for (int card = 0; card < 40; ++card) {
        books.ledger.begin_step(card);
        books.ledger.release(books.paint, books.at(books.air, fine), fine, {{101}, {7}});
    }
    books.ledger.move(books.at(books.air, fine), books.at(books.hall, fine), fine, {{1313}, {101}}, Pathway::seam);
    CHECK(books.ledger.sources()->sources().size() == SourceBook::most_sources);
    CHECK(books.ledger.closes());
}

TEST_CASE("tracing begins before the first dust")
{
    Ledger ledger;
    const AccountId paint = ledger.open("paint", Side::paint);
    const AccountId air = ledger.open("air", Side::inside);
    Amount held;
    ledger.release(paint, {held, air}, fine, {{5}, {1}});
    CHECK_THROWS_AS(ledger.trace(), BrokenPromise);
}
