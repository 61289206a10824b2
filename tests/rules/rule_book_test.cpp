#include "rules/lint.hpp"
#include "rules/rule_book.hpp"
#include "small_job.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

const std::string head = "format = 1\nid = \"b\"\ntitle = \"B\"\nedition = \"2026\"\n";

/// A rule in five lines and what is given; its first line is `[[rule]]`.
std::string short_rule(const std::string& id, const std::string& when, const std::string& more = "class = \"must\"\ncite = \"c\"")
{
    return "[[rule]]\nid = \"" + id + "\"\nsays = \"s\"\nreason = \"w\"\nweight = 1\n" + more + "\nwhen = { " + when + " }\n";
}

std::string problems_of(const std::string& rules)
{
    const auto book = read_rule_book(head + rules, "b.toml");
    if (book) return "none";
    std::string all;
    for (const Problem& problem : book.error()) all += describe(problem) + "\n";
    all.pop_back();
    return all;
}

}

TEST_CASE("a book is read with its conditions")
{
    const auto book = read_rule_book(head + short_rule("a", R"(before = ["post-signs", "first-dust"])") + short_rule("b", R"(only_by = { cards = "inspect", role = "certified-renovator" })"), "b.toml");
    REQUIRE(book);
    CHECK(book->rules.size() == 2);
    CHECK(kind_name(book->rules[0].when) == "before");
    CHECK(std::get<Before>(book->rules[0].when.kind).then.moment == Moment::first_dust);
    CHECK(book->rules[1].id.where == Place{"b.toml", 14, 6});
}

TEST_CASE("words that nobody knows are named with their place and the nearest known one")
{
    CHECK(problems_of(short_rule("a", R"(before = ["post-sings", "first-dust"])"))
          == "b.toml:12:20: expected a known step or moment, the nearest is \"post-signs\", found \"post-sings\" in rule \"a\"");
    CHECK(problems_of(short_rule("a", R"(never = { step = "fold-sheeting", with = { dirty-sides = "outward" } })"))
          == "b.toml:12:53: expected a known parameter of fold-sheeting, the nearest is \"dirty-side\", found \"dirty-sides\" in rule \"a\"");
    CHECK(problems_of(short_rule("a", R"(never = { step = "fold-sheeting", with = { dirty-side = "outwards" } })"))
          == "b.toml:12:66: expected `dirty-side` to be \"inward\" or \"outward\", found \"outwards\" in rule \"a\"");
    CHECK(problems_of(short_rule("a", R"(never = { step = "disturb-paint", with = { heat = ">= 1100" } })")).find("a temperature such as") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = { step = "vacuum-walls", with = { vacuum = "hover-vacuum" } })")).find("\"hover-vacuum\" in rule \"a\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(while = { state = "sign-up", from = "first-dust" })")).find("the nearest is \"signs-up\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(at_least = { measured = "reech", least = "6 ft" })")).find("the nearest is \"reach\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(at_least = { measured = "reach", least = "6" })")).find("a value that `reach` can have, found \"6\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = "sweep-floor")", "class = \"must\"\ncite = \"c\"\napplies = { facts = [\"has-carpets\"] }")).find("the nearest is \"has-carpet\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = "sweep-floor")", "class = \"must\"\ncite = \"c\"\nfollows-from = [\"b\"]")).find("expected a known rule") != std::string::npos);
}

TEST_CASE("the form of a condition is checked")
{
    CHECK(problems_of(short_rule("a", R"(befor = ["post-signs", "first-dust"])")).find("the nearest is \"before\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", "")).find("a table with one condition") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(before = ["post-signs"])")).find("`then`") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(before = ["post-signs", { phse = "work" }])")).find("the nearest is \"phase\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(before = ["post-signs", "start"])")).find("something that other cards can come before") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(while = { state = "signs-up" })")).find("either `during` or `from`") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(within = { do = "store-waste", after = "carry-out" })")).find("either `after` and `time`") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(within = { do = "store-waste", counted = "days", most = 3 })")).find("`counted` to be a number") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(at_least = { measured = "reach" })")).find("`least`, `most` or `below`") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(at_least = { least = "1" })")).find("either `measured` or `done`") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = "first-dust")")).find("cards or a state") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(exactly_one_of = ["post-signs"])")).find("a list of two or more") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(exactly_one_of = ["post-signs", "post-signs"])")).find("each of them once, found \"post-signs\" twice") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(exactly_one_of = ["post-signs", "end"])")).find("cards or a state, found a moment") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(only_by = { cards = { state = "passed" }, role = "trained-worker" })")).find("cards, not a state") != std::string::npos);
}

TEST_CASE("`this` needs `each`, and a thing of the right kind")
{
    const std::string when = R"(before = [{ step = "cover-register", with = { opening = "this" } }, "first-dust"])";
    CHECK(problems_of(short_rule("a", when)).find("`each` beside a condition that says \"this\"") != std::string::npos);
    CHECK(problems_of(short_rule("a", when, "class = \"must\"\ncite = \"c\"\neach = \"sill\"")).find("\"this\" is each sill") != std::string::npos);
    CHECK(problems_of(short_rule("a", when, "class = \"must\"\ncite = \"c\"\neach = \"register\"")) == "none");
    CHECK(problems_of(short_rule("a", R"(while = { state = "signs-up", of = "door", from = "start" })")).find("a book knows no ids") != std::string::npos);
}

TEST_CASE("what a rule rests on limits what it may do")
{
    const std::string when = R"(never = "sweep-floor")";
    CHECK(problems_of(short_rule("a", when, "class = \"must\"")) == "b.toml:6:6: expected a `cite` for a must-rule, found none in rule \"a\"");
    CHECK(problems_of(short_rule("a", when, "class = \"should\"\norder = \"listed\"\ncritical = true")).find("no `critical` on a listed or practice order") != std::string::npos);
    CHECK(problems_of(short_rule("a", when, "class = \"practice\"\ncritical = true")).find("no `critical` on a listed or practice order") != std::string::npos);
    CHECK(problems_of(short_rule("a", when, "class = \"must\"\ncite = \"c\"\ncritical = true\nfollows-from = [\"b\"]") + short_rule("b", R"(never = "open-window")", "class = \"should\""))
          == "b.toml:13:17: expected a must-rule as the root of a critical one, found \"b\", a should-rule, in rule \"a\"");
    CHECK(problems_of(short_rule("a", when, "class = \"must\"\ncite = \"c\"\norder = \"listed\"")).find("class \"should\" for a listed order") != std::string::npos);
    CHECK(problems_of(short_rule("a", when, "class = \"should\"\norder = \"practice\"")).find("class \"practice\" for a practice order") != std::string::npos);
    CHECK(problems_of(short_rule("a", when) + short_rule("a", when)) == "b.toml:14:6: expected each rule once, found \"a\" again, first in line 6");
}

TEST_CASE("rules that contradict each other are named as a cycle")
{
    CHECK(problems_of(short_rule("a", R"(before = ["mist-sheeting", "fold-sheeting"])") + short_rule("b", R"(before = ["fold-sheeting", "vacuum-walls"])") +
                      short_rule("c", R"(before = ["vacuum-walls", "mist-sheeting"])"))
          == "b.toml:28:8: expected rules that some order can keep, found a cycle: fold-sheeting before vacuum-walls (b), vacuum-walls before mist-sheeting (c), "
             "mist-sheeting before fold-sheeting (a)");
    CHECK(problems_of(short_rule("a", R"(before = ["post-signs", "first-dust"])") + short_rule("b", R"(before = ["last-dust", "post-signs"])")).find("a cycle: ") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(before = ["wipe-sill", { state = "passed" }])") + short_rule("b", R"(not_before = ["wipe-sill", "passed"])")).find("a cycle: ") != std::string::npos);
}

TEST_CASE("a narrower card closes a circle only where every such card is meant")
{
    // Walls before the floor is vacuumed, the sills before the walls: three different things.
    CHECK(problems_of(short_rule("a", R"(before = ["vacuum-walls", { step = "vacuum-surfaces", with = { target = "floor" } }])") +
                      short_rule("b", R"(before = [{ step = "vacuum-surfaces", with = { target = "sills" } }, "vacuum-walls"])")) == "none");
    CHECK(problems_of(short_rule("a", R"(before = ["vacuum-walls", "vacuum-surfaces"])") +
                      short_rule("b", R"(before = [{ step = "vacuum-surfaces", with = { target = "sills" } }, "vacuum-walls"])")).find("a cycle") != std::string::npos);
    // The last of several may well come after what the first must precede.
    CHECK(problems_of(short_rule("a", R"(before = ["vacuum-walls", { step = "vacuum-surfaces", which = "last" }])") + short_rule("b", R"(before = ["vacuum-surfaces", "vacuum-walls"])")) == "none");
}

TEST_CASE("rules that are never in force together do not contradict each other")
{
    const std::string carpet = "class = \"must\"\ncite = \"c\"\napplies = { facts = [\"has-carpet\"] }";
    const std::string bare = "class = \"must\"\ncite = \"c\"\napplies = { unless = [\"has-carpet\"] }";
    const std::string forth = R"(before = ["mist-sheeting", "fold-sheeting"])";
    const std::string back = R"(before = ["fold-sheeting", "mist-sheeting"])";
    CHECK(problems_of(short_rule("a", forth, carpet) + short_rule("b", back, bare)) == "none");
    CHECK(problems_of(short_rule("a", forth, carpet) + short_rule("b", back, carpet)).find("a cycle") != std::string::npos);
    CHECK(problems_of(short_rule("a", forth, carpet) + short_rule("b", back)).find("a cycle") != std::string::npos);
}

TEST_CASE("a rule cannot ask for what another forbids, nor be in force nowhere, nor follow from itself")
{
    CHECK(problems_of(short_rule("a", R"(before = ["sweep-floor", "mop-floor"])") + short_rule("b", R"(never = "sweep-floor")")).find("\"b\" forbids \"sweep-floor\", which \"a\" asks for") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = "sweep-floor")", "class = \"must\"\ncite = \"c\"\napplies = { facts = [\"has-carpet\"], unless = [\"has-carpet\"] }")).find("both asked and ruled out") != std::string::npos);
    const std::string follows = "class = \"must\"\ncite = \"c\"\nfollows-from = ";
    CHECK(problems_of(short_rule("a", R"(never = "sweep-floor")", follows + "[\"a\"]")).find("another rule, found the rule itself") != std::string::npos);
    CHECK(problems_of(short_rule("a", R"(never = "sweep-floor")", follows + "[\"b\"]") + short_rule("b", R"(never = "open-window")", follows + "[\"a\"]")).find("does not follow from itself") != std::string::npos);
}

TEST_CASE("cases outside a book and its cut are checked like the rules")
{
    const std::string own = short_rule("a", R"(never = "sweep-floor")");
    CHECK(problems_of("[[outside]]\nwhy = \"w\"\napplies = { facts = [\"has-carpets\"] }\n" + own) ==
          "b.toml:7:22: expected a known fact, the nearest is \"has-carpet\", found \"has-carpets\" in case outside the book \"w\"");
    CHECK(problems_of("[[outside]]\nwhy = \"w\"\napplies = { done = [{ step = \"cover-register\", with = { opening = \"this\" } }] }\n" + own).find("`each` beside") != std::string::npos);
    CHECK(problems_of("[passing]\nscore = 101\n" + own).find("b.toml:6:9: expected `score` to be") != std::string::npos);
    CHECK(problems_of("[passing]\nscores = 10\n" + own).find("the nearest is \"score\"") != std::string::npos);
    CHECK(problems_of("").find("at least one rule") != std::string::npos);
}

TEST_CASE("many problems are told at once, in the order of the file")
{
    const auto book = read_rule_book(head + short_rule("a", R"(never = "sweep")", "class = \"must\"") + short_rule("b", R"(never = { step = "inspect", with = { lite = "dim" } })"), "b.toml");
    REQUIRE_FALSE(book);
    REQUIRE(book.error().size() == 3);
    CHECK(book.error()[0].where.line == 6);
    CHECK(book.error()[1].where.line == 11);
    CHECK(book.error()[2].where.line == 19);
}

TEST_CASE("rules that a scenario can never put in force are reported")
{
    const auto book = read_rule_book(head + short_rule("carpet", R"(never = "mop-floor")", "class = \"must\"\ncite = \"c\"\napplies = { facts = [\"has-carpet\"] }") +
                                         short_rule("sills", R"(before = [{ step = "wipe-sill", with = { sill = "this" } }, "wipe-floor"])", "class = \"must\"\ncite = \"c\"\neach = \"sill\"") +
                                         short_rule("sweep", R"(never = "sweep-floor")"),
                                     "b.toml");
    REQUIRE(book);
    job::Scenario scenario = small_scenario();
    CHECK(idle_rules(*book, scenario).size() == 1);
    scenario.sills.clear();
    const auto idle = idle_rules(*book, scenario);
    REQUIRE(idle.size() == 2);
    CHECK(idle[1].rule == "sills");
    CHECK(idle[1].why == "there is no sill");
}
