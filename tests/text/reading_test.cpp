#include "text/reading.hpp"

#include "examples.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <string>
#include <vector>

using namespace flapdoor;
using namespace example;
using text::read_document;

namespace {

/// Every problem as users see it, one a line.
template <class T>
std::string told(const std::string& toml)
{
    const Result<T> thing = read_document<T>(toml, "f.toml");
    if (thing) return "read";
    std::string lines;
    for (const Problem& problem : thing.error()) {
        if (!lines.empty()) lines += '\n';
        lines += describe(problem);
    }
    return lines;
}

}

TEST_CASE("a file fills every kind of field")
{
    const Result<Everything> read = read_document<Everything>(R"(
        is-dry  = true
        count   = 3
        seed    = 9223372036854775807
        share   = 1
        note    = "two lines"
        worker  = "rosa"
        weight  = "heavy"
        reach   = "6 ft 3 in"
        wait    = "1 h"
        loading = "10 ug/ft2"
        air     = "77 F"
        dust    = "2 ng"
        corner  = ["3 ft", "2 ft"]
        score   = "3 of 5"
        by      = ["rosa", "luis"]
        steps   = ["2 ft", "1 ft 6 in"]
        flow    = "100 cfm"
        grid    = [[1, 2], [], [3]]
        [sheet]
        title   = "plastic"
        [[spare]]
        title   = "first"
        layers  = 2
        [[spare]]
        title   = "second"
    )", "f.toml");
    INFO((read ? "" : describe(read.error().front())));
    REQUIRE(read);
    Everything want;
    want.is_dry = true;
    want.count = 3;
    want.seed = 9223372036854775807U;
    want.share = 1.0;
    want.note = "two lines";
    want.worker = {"rosa"};
    want.weight = Weight::heavy;
    want.reach = 6.0_ft + 3.0_in;
    want.wait = 1.0_h;
    want.loading = 10.0_ugpft2;
    want.air = fahrenheit(77.0);
    want.dust = {2000};
    want.corner = {3.0_ft, 2.0_ft};
    want.score = {3, 5};
    want.by = {{"rosa"}, {"luis"}};
    want.steps = {2.0_ft, 1.0_ft + 6.0_in};
    want.flow = *text::parse_quantity<AirFlow>("100 cfm");
    want.grid = {{1, 2}, {}, {3}};
    want.sheet.title = "plastic";
    want.spares = {{"first", 10.0_ft, 2}, {"second", 10.0_ft, 1}};
    CHECK(*read == want);
}

TEST_CASE("what a file leaves out keeps its default")
{
    const Result<Everything> read = read_document<Everything>("", "f.toml");
    REQUIRE(read);
    CHECK(*read == Everything{});
}

TEST_CASE("a wrong value says what was expected and what was found")
{
    const auto one = [](const std::string& line) { return told<Everything>(line); };
    CHECK(one("is-dry = 1") == "f.toml:1:10: expected `is-dry` to be true or false, found 1");
    CHECK(one("count = 1.5") == "f.toml:1:9: expected `count` to be a whole number from 0 to 100, found 1.5");
    CHECK(one("count = 101") == "f.toml:1:9: expected `count` to be a whole number from 0 to 100, found 101");
    CHECK(one("seed = \"x\"") == "f.toml:1:8: expected `seed` to be a whole number, found \"x\"");
    CHECK(one("seed = -1") == "f.toml:1:8: expected `seed` to be a whole number from 0 to 9223372036854775807, found -1");
    CHECK(one("share = 1.5") == "f.toml:1:9: expected `share` to be a number from 0 to 1, found 1.5");
    CHECK(one("share = nan") == "f.toml:1:9: expected `share` to be a number from 0 to 1, found nan");
    CHECK(one("share = inf") == "f.toml:1:9: expected `share` to be a number from 0 to 1, found inf");
    CHECK(one("note = 5") == "f.toml:1:8: expected `note` to be text in quotes, found 5");
    CHECK(one("worker = []") == "f.toml:1:10: expected `worker` to be a name in quotes, found an empty list");
    CHECK(one("worker = \" rosa\"") ==
          "f.toml:1:10: expected `worker` to be a name of at most 80 bytes, without spaces around it or line ends in it, found \" rosa\"");
    CHECK(one("weight = \"haevy\"") == R"(f.toml:1:10: expected `weight` to be "light", "medium" or "heavy"; the nearest is "heavy", found "haevy")");
    CHECK(one("weight = \"zzz\"") == R"(f.toml:1:10: expected `weight` to be "light", "medium" or "heavy", found "zzz")");
    CHECK(one("weight = 2") == R"(f.toml:1:10: expected `weight` to be "light", "medium" or "heavy", found 2)");
    CHECK(one("reach = \"0.5\"") == R"(f.toml:1:9: expected `reach` to be a length such as "0.5 in", found "0.5" (no unit))");
    CHECK(one("reach = 0.5") == R"(f.toml:1:9: expected `reach` to be a length such as "0.5 in", found 0.5 (no unit and no quotes))");
    CHECK(one("reach = \"101 ft\"") == R"(f.toml:1:9: expected `reach` to be a length from 0 ft to 100 ft, found "101 ft")");
    CHECK(one("reach = true") == R"(f.toml:1:9: expected `reach` to be a length such as "0.5 in", found true)");
    CHECK(one("dust = \"1 g\"") == R"(f.toml:1:8: expected `dust` to be a mass from 0 ug to 1 mg, found "1 g")");
    CHECK(one("dust = \"40 ft\"") == R"(f.toml:1:8: expected `dust` to be a mass such as "40 ug", found "40 ft" (a length))");
    CHECK(one("by = \"rosa\"") == "f.toml:1:6: expected `by` to be a list, found \"rosa\"");
    CHECK(one("by = [\"rosa\", \"\"]") == "f.toml:1:15: expected entry 2 of `by` to be a name in quotes, found \"\"");
    CHECK(one("steps = [\"2 ft\", \"9 ft\"]") == R"(f.toml:1:18: expected entry 2 of `steps` to be a length from 1 in to 3 ft, found "9 ft")");
    CHECK(one("flow = \"5 m3/h\"") == R"(f.toml:1:8: expected `flow` to be an air flow from 10 m3/h to 2000 m3/h, found "5 m3/h")");
    CHECK(one("sheet = 5") == "f.toml:1:9: expected `sheet` to be a table, found 5");
    CHECK(one("spare = [{ title = \"a\" }, 5]") == "f.toml:1:27: expected entry 2 of `spare` to be a table, found 5");
    CHECK(one("corner = [\"1 ft\"]") == "f.toml:1:10: expected a list with its `y`, found a shorter one");
    CHECK(one("corner = [\"1 ft\", \"1 ft\", \"1 ft\"]") == "f.toml:1:27: expected the list to end after entry 2, found \"1 ft\"");
    CHECK(one("corner = { x = \"1 ft\", y = \"2 ft\" }") == "read");
    CHECK(one("score = \"all\"") == R"(f.toml:1:9: expected a score such as "3 of 5", found "all")");
    CHECK(one("grid = [[1], [12]]") == "f.toml:1:15: expected entry 1 of `grid` to be a whole number from 0 to 9, found 12");
}

TEST_CASE("unknown keys are refused and the nearest known one is named")
{
    CHECK(told<Sheet>("title = \"a\"\nwidht = \"1 ft\"") == R"(f.toml:2:1: expected a known key, the nearest is "width", found unknown key "widht")");
    CHECK(told<Sheet>("title = \"a\"\ncolor = 1") == R"(f.toml:2:1: expected a known key: "title", "width" or "layers", found unknown key "color")");
    CHECK(told<Rest>("x = 1") == "f.toml:1:1: expected no key here, found unknown key \"x\"");
}

TEST_CASE("missing keys are told at their table")
{
    CHECK(told<Sheet>("width = \"2 ft\"") == "f.toml:1:1: expected the key `title`, found a table without it");
    CHECK(told<Everything>("[[spare]]\ntitle = \"a\"\n\n[[spare]]\nlayers = 2") == "f.toml:4:1: expected the key `title`, found a table without it");
    CHECK(told<Sheet>("title = \"\"") == "f.toml:1:9: expected `title` to be text in quotes, found \"\"");
}

TEST_CASE("every mistake of meaning comes at once, in the order of the file")
{
    CHECK(told<Everything>("share = 2\nreach = 6\nlayer = 1\n[sheet]\nwidth = \"90 ft\"\n") ==
          "f.toml:1:9: expected `share` to be a number from 0 to 1, found 2\n"
          "f.toml:2:9: expected `reach` to be a length such as \"0.5 in\", found 6 (no unit and no quotes)\n"
          "f.toml:3:1: expected a known key: \"is-dry\", \"count\", \"seed\", \"share\", \"note\", \"worker\", \"weight\", \"reach\", \"wait\", \"loading\", "
          "\"air\", \"dust\" and 8 more, found unknown key \"layer\"\n"
          "f.toml:4:1: expected the key `title`, found a table without it\n"
          "f.toml:5:9: expected `width` to be a length from 1 ft to 20 ft, found \"90 ft\"");
}

TEST_CASE("a card is read from one flat table: its step's keys beside its own")
{
    const Result<Card> card = read_document<Card>("do = \"lay-floor-sheet\"\nby = [\"rosa\"]\nreach = \"7 ft\"\n", "f.toml");
    REQUIRE(card);
    CHECK(*card == Card{LayFloorSheet{7.0_ft}, {{"rosa"}}, ""});

    // An alternative chosen anew starts from its defaults.
    const Result<Plan> plan = read_document<Plan>(
        "[[card]]\ndo = \"tape-seam\"\nlayers = 2\nby = [\"luis\"]\nlabel = \"x\"\n[[card]]\ndo = \"rest\"\nby = [\"rosa\"]\n[[warm-up]]\nkind = \"tape-seam\"\nlayers = 3\n", "f");
    REQUIRE(plan);
    CHECK(plan->cards == std::vector<Card>{{TapeSeam{2}, {{"luis"}}, "x"}, {Rest{}, {{"rosa"}}, ""}});
    CHECK(plan->warm_up == std::vector<Step>{TapeSeam{3}});
}

TEST_CASE("mistakes on a card name the step, the key or what is missing")
{
    CHECK(told<Card>("do = \"lay-flor-sheet\"\nby = [\"rosa\"]\nreach = \"7 ft\"") ==
          R"(f.toml:1:6: expected `do` to be "lay-floor-sheet", "tape-seam" or "rest"; the nearest is "lay-floor-sheet", found "lay-flor-sheet")");
    CHECK(told<Card>("do = \"lay-floor-sheet\"\nby = [\"rosa\"]\nraech = \"7 ft\"") ==
          R"(f.toml:3:1: expected a known key, the nearest is "reach", found unknown key "raech")");
    CHECK(told<Card>("do = \"lay-floor-sheet\"\nby = [\"rosa\"]\nlayers = 2") ==
          R"(f.toml:3:1: expected a known key: "do", "reach", "by" or "label", found unknown key "layers")");
    CHECK(told<Card>("do = \"tape-seam\"\nby = [\"rosa\"]") == "f.toml:1:1: expected the key `layers`, found a table without it");
    CHECK(told<Card>("by = [\"rosa\"]\nreach = \"7 ft\"") == "f.toml:1:1: expected the key `do`, found a table without it");
    CHECK(told<Card>("do = \"rest\"\nby = []") == "f.toml:2:6: expected `by` to be a list with at least one entry, found an empty list");
    CHECK(told<Plan>("[[warm-up]]\nlayers = 2") == "f.toml:1:1: expected the key `kind`, found a table without it");
    CHECK(told<Plan>("warm-up = [3]") == "f.toml:1:12: expected entry 1 of `warm-up` to be a table, found 3");
}

TEST_CASE("lists, tables and the list of problems have an end")
{
    std::string many = "by = [";
    for (int i = 0; i < 10'001; ++i) many += "\"a\",";
    CHECK(told<Everything>(many + "]") == "f.toml:1:6: expected `by` to be a list of at most 10000 entries, found 10001 entries");

    std::string keys;
    for (int i = 0; i < 10'001; ++i) keys += fmt::format("k{} = 1\n", i);
    CHECK(told<Everything>(keys) == "f.toml:1:1: expected a table of at most 10000 keys, found 10001 keys");

    std::string wrong;
    for (int i = 0; i < 5'000; ++i) wrong += fmt::format("k{} = 1\n", i);
    const Result<Everything> read = read_document<Everything>(wrong, "f.toml");
    REQUIRE_FALSE(read);
    CHECK(read.error().size() == text::most_problems);
}

TEST_CASE("what a user wrote cannot forge the terminal")
{
    CHECK(told<Everything>("weight = \"\\u001B[2J\\n\\u202E\"") ==
          R"(f.toml:1:10: expected `weight` to be "light", "medium" or "heavy", found "\u001B[2J\n\u202E")");
    CHECK(told<Everything>("weight = \"" + std::string(300, 'x') + "\"").ends_with("found \"" + std::string(60, 'x') + "...\""));
}

namespace {

struct Twice {
    int a = 0, b = 0;
    static void fields(auto& self, auto&& visit)
    {
        visit("a", self.a);
        visit("a", self.b);
    }
};

}

TEST_CASE("a struct that gives two fields one key is a bug of ours")
{
    CHECK_THROWS_AS(read_document<Twice>("a = 1", "f"), BrokenPromise);
}
