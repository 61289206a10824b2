#include "debrief/seed_list.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::debrief;

using Seeds = std::vector<std::uint64_t>;

TEST_CASE("seeds are read as people write them")
{
    CHECK(read_seeds("7", "--seeds", 10).value() == Seeds{7});
    CHECK(read_seeds("1-4", "--seeds", 10).value() == Seeds{1, 2, 3, 4});
    CHECK(read_seeds("9-10,1-2,2", "--seeds", 10).value() == Seeds{1, 2, 9, 10});
    CHECK(read_seeds("18446744073709551614-18446744073709551615", "--seeds", 10).value().size() == 2);
    CHECK(read_seeds("1-10", "--seeds", 10).value().size() == 10);
}

TEST_CASE("seeds that make no sense are told with their place, and long lists before they are made")
{
    for (const char* wrong : {"", "0", "0-3", "x", "1-", "-3", "1-2-3", "1,,2", "1, 2", "1.5", "99999999999999999999", "+1"}) {
        INFO(wrong);
        CHECK_FALSE(read_seeds(wrong, "--seeds", 10));
    }
    const auto backwards = read_seeds("1-2,5-1", "--seeds", 10);
    REQUIRE_FALSE(backwards);
    CHECK(describe(backwards.error().front()) == "--seeds:1:5: expected the smaller seed first, found `5-1`");
    for (const char* huge : {"1-11", "1-18446744073709551615", "1-5,6-11", "5-18446744073709551615,1"}) {
        INFO(huge);
        REQUIRE_FALSE(read_seeds(huge, "--seeds", 10));
        CHECK(read_seeds(huge, "--seeds", 10).error().front().expected == "at most 10 seeds; for more, make several studies");
    }
}

TEST_CASE("a part is one of its parts")
{
    CHECK(read_part("2/8", "--part")->part == 2);
    CHECK(read_part("8/8", "--part")->parts == 8);
    for (const char* wrong : {"9/8", "0/8", "1/0", "2", "/", "2/", "a/b", "1/1001", "1/8/2"}) {
        INFO(wrong);
        CHECK_FALSE(read_part(wrong, "--part"));
    }
}
