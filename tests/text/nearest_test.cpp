#include "text/nearest.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <array>
#include <string>

using namespace flapdoor;
using text::edit_distance;
using text::nearest;

TEST_CASE("one dropped, added, replaced or swapped letter is one change")
{
    CHECK(edit_distance("width", "width") == 0);
    CHECK(edit_distance("width", "wdth") == 1);
    CHECK(edit_distance("width", "widtth") == 1);
    CHECK(edit_distance("width", "wodth") == 1);
    CHECK(edit_distance("width", "widht") == 1);
    CHECK(edit_distance("", "abc") == 3);
    CHECK(edit_distance("kitten", "sitting") == 3);
}

TEST_CASE("the nearest known word is found, the first of equals, and none when all are far")
{
    constexpr std::array<std::string_view, 4> known{"width", "depth", "height", "by"};
    CHECK(nearest("widht", known) == "width");
    CHECK(nearest("heigth", known) == "height");
    CHECK(nearest("bi", known) == "by");
    CHECK(nearest("ceiling", known) == std::nullopt);
    CHECK(nearest("x", known) == std::nullopt);
    CHECK(nearest("", known) == std::nullopt);

    constexpr std::array<std::string_view, 2> equals{"bat", "cat"};
    CHECK(nearest("rat", equals) == "bat");
}

TEST_CASE("edit distance is the same both ways and never more than the longer word", "[property]")
{
    CHECK(rc::check([](const std::string& a, const std::string& b) {
        const std::size_t there = edit_distance(a, b);
        RC_ASSERT(there == edit_distance(b, a));
        RC_ASSERT(there <= std::max(a.size(), b.size()));
        RC_ASSERT((there == 0) == (a.substr(0, 64) == b.substr(0, 64)));
    }));
}
