#include "dust/ledger.hpp"

#include "core/insist.hpp"
#include "dust/apportion.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <array>
#include <map>
#include <set>
#include <string_view>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr SizeClass fine = SizeClass::um_2_5;
constexpr SizeClass coarse = SizeClass::um_80;

/// A work area, a hall beyond it and a bag, each with the place where its dust is held.
struct Books {
    Ledger ledger;
    AccountId paint = ledger.open("paint film", Side::paint);
    AccountId air = ledger.open("work room air", Side::inside);
    AccountId floor = ledger.open("work room floor", Side::inside);
    AccountId hall = ledger.open("hall floor", Side::outside);
    AccountId bag = ledger.open("waste bag", Side::contained);
    std::map<AccountId, PerClass<Amount>> held{{air, {}}, {floor, {}}, {hall, {}}, {bag, {}}};

    Holding at(AccountId account, SizeClass k) { return {held[account][k], account}; }
};

/// Sums made apart from the ledger's own.
Amount outside_by_hand(const Ledger& ledger)
{
    Amount sum;
    for (const Account& account : ledger.accounts())
        if (account.side == Side::outside)
            for (const Amount& amount : account.balance) sum += amount;
    return sum;
}

Amount crossed_by_hand(const Ledger& ledger)
{
    Amount sum;
    for (std::size_t p = 0; p < pathway_count; ++p) sum += total(ledger.crossed(static_cast<Pathway>(p)));
    return sum;
}

}

TEST_CASE("moving dust from floor to sole loses none of it", "[property]")
{
    const bool holds = rc::check([] {
        Books books;
        constexpr std::array<Pathway, 8> ways{Pathway::return_air, Pathway::seam,  Pathway::doorway, Pathway::shoes,
                                              Pathway::clothing,   Pathway::tools, Pathway::bag,     Pathway::sheeting_removal};
        std::vector<AccountId> hosts{books.air, books.floor, books.hall, books.bag};
        std::map<Pathway, Amount> by_hand;
        Amount released;
        const auto moves = *rc::gen::inRange(1, 60);
        for (int i = 0; i < moves; ++i) {
            const SizeClass k = *rc::gen::elementOf(all_classes());
            if (*rc::gen::inRange(0, 4) == 0) {
                const Amount fresh{{*rc::gen::inRange<std::int64_t>(0, 1'000'000'000)}, {*rc::gen::inRange<std::int64_t>(0, 50'000'000)}};
                books.ledger.release(books.paint, books.at(books.air, k), k, fresh);
                released += fresh;
            }
            else if (*rc::gen::inRange(0, 12) == 0) {
                // The bag is carried out, or back in.
                const Side side = *rc::gen::element(Side::inside, Side::outside, Side::contained);
                const bool was_outside = books.ledger.account(books.bag).side == Side::outside;
                const Amount in_bag = total(books.ledger.account(books.bag).balance);
                books.ledger.move_account(books.bag, side, Pathway::bag);
                if (side == Side::outside && !was_outside) by_hand[Pathway::bag] += in_bag;
                if (side != Side::outside && was_outside) by_hand[Pathway::bag] -= in_bag;
            }
            else {
                const AccountId from = *rc::gen::elementOf(hosts);
                const AccountId to = *rc::gen::elementOf(hosts);
                const Amount amount = part(books.held[from][k], static_cast<double>(*rc::gen::inRange(0, 101)) / 100.0);
                const bool goes_out = books.ledger.account(from).side != Side::outside && books.ledger.account(to).side == Side::outside;
                const bool comes_in = books.ledger.account(from).side == Side::outside && books.ledger.account(to).side != Side::outside;
                const Pathway way = goes_out ? *rc::gen::elementOf(ways) : comes_in ? Pathway::recovered : Pathway::none;
                books.ledger.move(books.at(from, k), books.at(to, k), k, amount, way);
                if (goes_out) by_hand[way] += amount;
                if (comes_in) by_hand[way] -= amount;
            }
            RC_ASSERT(books.ledger.closes());
        }
        // Balances are what is held; what is held is what was released; what is outside went there by a pathway.
        Amount everywhere;
        for (const auto& [account, held] : books.held) {
            RC_ASSERT(books.ledger.account(account).balance == held);
            everywhere += total(held);
        }
        RC_ASSERT(everywhere == released);
        RC_ASSERT(books.ledger.released() == released);
        RC_ASSERT(outside_by_hand(books.ledger) == crossed_by_hand(books.ledger));
        RC_ASSERT(books.ledger.on(Side::outside) == outside_by_hand(books.ledger));
        for (const Pathway way : ways) RC_ASSERT(total(books.ledger.crossed(way)) == by_hand[way]);
        RC_ASSERT(total(books.ledger.crossed(Pathway::recovered)) == by_hand[Pathway::recovered]);
        RC_ASSERT(total(books.ledger.crossed(Pathway::none)).is_zero());
    });
    CHECK(holds);
}

TEST_CASE("classes, dust and lead are booked apart")
{
    Books books;
    books.ledger.release(books.paint, books.at(books.air, fine), fine, {{100}, {3}});
    books.ledger.release(books.paint, books.at(books.air, coarse), coarse, {{50}, {0}});
    books.ledger.move(books.at(books.air, fine), books.at(books.hall, fine), fine, {{40}, {1}}, Pathway::seam);
    CHECK(books.ledger.crossed(Pathway::seam)[fine] == Amount{{40}, {1}});
    CHECK(books.ledger.crossed(Pathway::seam)[coarse].is_zero());
    CHECK(books.ledger.account(books.paint).balance[fine] == Amount{{-100}, {-3}});
    CHECK(books.held[books.air][fine] == Amount{{60}, {2}});
    CHECK(books.ledger.released() == Amount{{150}, {3}});
    CHECK(books.ledger.on(Side::inside) == Amount{{110}, {2}});
}

TEST_CASE("what is cleaned up outside is taken off what is outside")
{
    Books books;
    books.ledger.release(books.paint, books.at(books.floor, fine), fine, {{100}, {3}});
    books.ledger.move(books.at(books.floor, fine), books.at(books.hall, fine), fine, {{100}, {3}}, Pathway::shoes);
    books.ledger.move(books.at(books.hall, fine), books.at(books.bag, fine), fine, {{30}, {1}}, Pathway::recovered);
    CHECK(total(books.ledger.crossed(Pathway::shoes)) == Amount{{100}, {3}});
    CHECK(total(books.ledger.crossed(Pathway::recovered)) == Amount{{-30}, {-1}});
    CHECK(books.ledger.on(Side::outside) == Amount{{70}, {2}});
    CHECK(books.ledger.closes());
}

TEST_CASE("old dust is booked apart: it is nobody's release and crosses nothing", "[old]")
{
    Books books;
    const AccountId before = books.ledger.open("there before", Side::before);
    books.ledger.find(before, books.at(books.floor, fine), fine, {{300}, {6}});
    books.ledger.find(before, books.at(books.hall, fine), fine, {{1000}, {10}});
    CHECK(books.ledger.closes());
    CHECK(books.ledger.found() == Amount{{1300}, {16}});
    CHECK(books.ledger.released().is_zero());
    CHECK(books.ledger.on(Side::outside).is_zero());
    CHECK(books.ledger.old_on(Side::outside) == Amount{{1000}, {10}});

    // Two thirds of the floor are new now; what leaves takes old and new along in proportion, and only the new crosses.
    books.ledger.release(books.paint, books.at(books.floor, fine), fine, {{600}, {12}});
    books.ledger.move(books.at(books.floor, fine), books.at(books.hall, fine), fine, {{90}, {9}}, Pathway::shoes);
    CHECK(total(books.ledger.crossed(Pathway::shoes)) == Amount{{60}, {6}});
    CHECK(books.ledger.on(Side::outside) == Amount{{60}, {6}});
    CHECK(books.ledger.account(books.floor).from_work()[fine] == Amount{{540}, {6}});
    CHECK(books.ledger.account(books.hall).old[fine] == Amount{{1030}, {13}});

    // Cleaning the hall takes mostly old dust, and is credited only with the new.
    books.ledger.move(books.at(books.hall, fine), books.at(books.bag, fine), fine, {{1090}, {19}}, Pathway::recovered);
    CHECK(total(books.ledger.crossed(Pathway::recovered)) == Amount{{-60}, {-6}});
    CHECK(books.ledger.on(Side::contained) == Amount{{60}, {6}});
    CHECK(books.ledger.closes());
    CHECK_THROWS_AS(books.ledger.find(books.paint, books.at(books.floor, fine), fine, {{1}, {0}}), BrokenPromise);
    CHECK_THROWS_AS(books.ledger.find(before, books.at(books.floor, fine), fine, {{-1}, {0}}), BrokenPromise);
}

TEST_CASE("however old and new are mixed and cut, neither goes below nothing and both stay whole", "[old][property]")
{
    const bool holds = rc::check([] {
        Books books;
        const AccountId before = books.ledger.open("there before", Side::before);
        std::vector<AccountId> hosts{books.air, books.floor, books.hall, books.bag};
        Amount found, released;
        const auto moves = *rc::gen::inRange(1, 80);
        for (int i = 0; i < moves; ++i) {
            const Amount fresh{{*rc::gen::inRange<std::int64_t>(0, 2'000'000'000'000)}, {*rc::gen::inRange<std::int64_t>(0, 7)}};
            const auto kind = *rc::gen::inRange(0, 4);
            if (kind == 0) {
                books.ledger.find(before, books.at(*rc::gen::elementOf(hosts), fine), fine, fresh);
                found += fresh;
            }
            else if (kind == 1) {
                books.ledger.release(books.paint, books.at(books.air, fine), fine, fresh);
                released += fresh;
            }
            else {
                const AccountId from = *rc::gen::elementOf(hosts), to = *rc::gen::elementOf(hosts);
                const Amount amount = part(books.held[from][fine], static_cast<double>(*rc::gen::inRange(0, 1001)) / 1000.0);
                const bool crosses = (books.ledger.account(from).side == Side::outside) != (books.ledger.account(to).side == Side::outside);
                books.ledger.move(books.at(from, fine), books.at(to, fine), fine, amount, crosses ? Pathway::doorway : Pathway::none);
            }
            RC_ASSERT(books.ledger.closes());
            Amount old, made;
            for (const AccountId host : hosts) {
                const Account& account = books.ledger.account(host);
                for (const Amount& part : {account.old[fine], account.from_work()[fine]}) RC_ASSERT(part.dust.count >= 0 && part.lead.count >= 0);
                old += account.old[fine];
                made += account.from_work()[fine];
            }
            RC_ASSERT(old == found);
            RC_ASSERT(made == released);
            RC_ASSERT(books.ledger.found() == found);
            RC_ASSERT(books.ledger.on(Side::outside) == total(books.ledger.crossed(Pathway::doorway)));
        }
    });
    CHECK(holds);
}

TEST_CASE("an account that changes sides takes all it holds with it")
{
    Books books;
    const AccountId soles = books.ledger.open("soles", Side::inside);
    PerClass<Amount> under_soles;
    books.ledger.release(books.paint, {under_soles[fine], soles}, fine, {{9}, {2}});
    books.ledger.move_account(soles, Side::outside, Pathway::shoes);
    CHECK(total(books.ledger.crossed(Pathway::shoes)) == Amount{{9}, {2}});
    books.ledger.move_account(soles, Side::outside, Pathway::none);   // already there
    CHECK(books.ledger.on(Side::outside) == Amount{{9}, {2}});
    books.ledger.move_account(soles, Side::inside, Pathway::shoes);
    CHECK(total(books.ledger.crossed(Pathway::shoes)).is_zero());
    CHECK(books.ledger.closes());
}

TEST_CASE("the ledger does not close with a picogram too much, nor with dust outside that no pathway brought", "[promise]")
{
    // No public call can break the books, so they are broken by force.
    Books books;
    books.ledger.release(books.paint, books.at(books.floor, fine), fine, {{100}, {3}});
    REQUIRE(books.ledger.closes());
    Ledger& ledger = books.ledger;
    const_cast<Account&>(ledger.account(books.floor)).balance[fine].dust.count += 1;
    CHECK_FALSE(ledger.closes());
    const_cast<Account&>(ledger.account(books.floor)).balance[fine].dust.count -= 1;
    REQUIRE(ledger.closes());
    const_cast<Account&>(ledger.account(books.floor)).side = Side::outside;   // outside without a pathway
    CHECK_FALSE(ledger.closes());
}

TEST_CASE("each promise of the ledger fires, and leaves the books as they were", "[promise]")
{
    Books books;
    books.ledger.release(books.paint, books.at(books.floor, fine), fine, {{100}, {3}});
    const auto move = [&](AccountId from, AccountId to, Amount amount, Pathway way = Pathway::none) {
        books.ledger.move(books.at(from, fine), books.at(to, fine), fine, amount, way);
    };

    // Negative amounts.
    CHECK_THROWS_AS(move(books.floor, books.air, {{-1}, {0}}), BrokenPromise);
    CHECK_THROWS_AS(move(books.floor, books.air, {{1}, {-1}}), BrokenPromise);
    CHECK_THROWS_AS(books.ledger.release(books.paint, books.at(books.air, fine), fine, {{-1}, {0}}), BrokenPromise);
    // More than is there, of the dust or of the lead.
    CHECK_THROWS_AS(move(books.floor, books.air, {{101}, {0}}), BrokenPromise);
    CHECK_THROWS_AS(move(books.floor, books.air, {{1}, {4}}), BrokenPromise);
    CHECK_THROWS_AS(move(books.air, books.floor, {{1}, {0}}), BrokenPromise);
    // A crossing without a pathway, either way, and a pathway without a crossing.
    CHECK_THROWS_AS(move(books.floor, books.hall, {{1}, {0}}), BrokenPromise);
    CHECK_THROWS_AS(move(books.floor, books.air, {{1}, {0}}, Pathway::seam), BrokenPromise);
    CHECK_THROWS_AS(books.ledger.move_account(books.floor, Side::outside, Pathway::none), BrokenPromise);
    // Paint gives, it does not take; and it gives into the work area.
    CHECK_THROWS_AS(books.ledger.release(books.floor, books.at(books.air, fine), fine, {{1}, {0}}), BrokenPromise);
    CHECK_THROWS_AS(books.ledger.release(books.paint, books.at(books.hall, fine), fine, {{1}, {0}}), BrokenPromise);

    CHECK(books.held[books.floor][fine] == Amount{{100}, {3}});
    CHECK(books.held[books.air][fine].is_zero());
    CHECK(books.held[books.hall][fine].is_zero());
    CHECK(books.ledger.closes());

    move(books.floor, books.hall, {{1}, {0}}, Pathway::shoes);
    CHECK_THROWS_AS(move(books.hall, books.floor, {{1}, {0}}), BrokenPromise);
    CHECK(books.ledger.closes());
}

TEST_CASE("every pathway and every side has its own word")
{
    std::set<std::string_view> words(Words<Pathway>::words.begin(), Words<Pathway>::words.end());
    CHECK(words.size() == pathway_count);
    words.insert(Words<Side>::words.begin(), Words<Side>::words.end());
    CHECK(words.size() == pathway_count + 5);
    CHECK_FALSE(words.contains(""));
    CHECK(word_of(Pathway::shoes) == "shoes");
    CHECK(word_of(Side::contained) == "contained");
}
