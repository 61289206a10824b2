#include "text/table.hpp"

#include "core/insist.hpp"
#include "text/utf8.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <sstream>
#include <string>

using namespace flapdoor;
using namespace flapdoor::text;
using Lines = std::vector<std::string>;

TEST_CASE("text wraps at spaces, keeps its line ends and cuts what is too long")
{
    CHECK(wrap("tape the seam of the register", 12) == Lines{"tape the", "seam of the", "register"});
    CHECK(wrap("one\n\ntwo", 10) == Lines{"one", "", "two"});
    CHECK(wrap("  many   spaces  ", 20) == Lines{"many spaces"});
    CHECK(wrap("abcdefghij kl", 4) == Lines{"abcd", "efgh", "ij", "kl"});
    CHECK(wrap("", 5) == Lines{""});
    CHECK(wrap("exact fit", 9) == Lines{"exact fit"});
    CHECK_THROWS_AS(wrap("x", 0), BrokenPromise);
}

TEST_CASE("accented letters take one column and are never cut through")
{
    CHECK(columns("pañuelo húmedo") == 14);
    CHECK(columns("n\u0303") == 1);
    CHECK(wrap("ñññññ", 2) == Lines{"ññ", "ññ", "ñ"});
    CHECK(first_columns("ñandú", 1) == "ñ");
    CHECK(columns("\xFF\xC3") == 2);
}

TEST_CASE("a paragraph is indented on every line")
{
    CHECK(paragraph("Air drawn into an open register carries dust.", 24, 4) == "    Air drawn into an\n    open register\n    carries dust.\n");
    CHECK(paragraph("", 24, 4) == "\n");
    CHECK_THROWS_AS(paragraph("x", 4, 4), BrokenPromise);
}

TEST_CASE("a table aligns its columns and ends no line in spaces")
{
    const TextTable table{{{"pathway", Align::left}, {"lead", Align::right}, {"share", Align::right}},
                          {{"return air", "12.3 ug", "3.1 %"}, {"shoes", "4 ug"}, {"flap passage", "140 ug", "35 %"}}};
    CHECK(lay_out(table) == "pathway          lead  share\n"
                            "------------  -------  -----\n"
                            "return air    12.3 ug  3.1 %\n"
                            "shoes            4 ug\n"
                            "flap passage   140 ug   35 %\n");
    CHECK(lay_out({}).empty());
    CHECK_THROWS_AS(lay_out({{{"a", Align::left}}, {{"x", "y"}}}), BrokenPromise);
}

TEST_CASE("a table too wide for its room wraps its widest cells")
{
    const TextTable table{{{"rule", Align::left}, {"reason", Align::left}},
                          {{"registers-covered", "Air drawn into an open register carries dust to every room."}, {"signs", "So that nobody walks in."}}};
    CHECK(lay_out(table, 40) == "rule               reason\n"
                                "-----------------  ---------------------\n"
                                "registers-covered  Air drawn into an\n"
                                "                   open register carries\n"
                                "                   dust to every room.\n"
                                "signs              So that nobody walks\n"
                                "                   in.\n");
}

TEST_CASE("what a user wrote cannot forge the terminal in a table")
{
    CHECK(lay_out({{{"a", Align::left}}, {{"\x1B[31mred"}}}) == "a\n-------------\n\\u001B[31mred\n");
}

TEST_CASE("blocks stand side by side")
{
    CHECK(side_by_side("one\nthree\n", "x\ny\nz\n", 2) == "one    x\nthree  y\n       z\n");
    CHECK(side_by_side("a\nb\nc", "x", 1) == "a x\nb\nc\n");
}

TEST_CASE("no table is wider than its room, whatever stands in it", "[property]")
{
    CHECK(rc::check([](const std::vector<std::vector<std::string>>& cells) {
        TextTable table{{{"a", Align::left}, {"b", Align::right}, {"c", Align::left}}, cells};
        for (auto& row : table.rows) row.resize(3);
        const auto width = static_cast<std::size_t>(*rc::gen::inRange(22, 100));
        std::istringstream lines(lay_out(table, width));
        for (std::string line; std::getline(lines, line);) {
            RC_ASSERT(columns(line) <= width);
            RC_ASSERT(!line.ends_with(' '));
        }
    }));
    CHECK(rc::check([](const std::string& text) {
        const auto width = static_cast<std::size_t>(*rc::gen::inRange(1, 30));
        for (const std::string& line : wrap(text, width)) RC_ASSERT(columns(line) <= width);
    }));
}
