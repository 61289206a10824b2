#include "core/result.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;

TEST_CASE("a problem says where, what was expected and what was found, in one line")
{
    Problem problem;
    problem.where = {"hall.toml", 14, 12};
    problem.expected = "a length such as \"0.5 in\"";
    problem.found = "\"0.5\"";
    CHECK(describe(problem) == "hall.toml:14:12: expected a length such as \"0.5 in\", found \"0.5\"");
    problem.where = {"hall.toml", 0, 0};
    CHECK(describe(problem) == "hall.toml: expected a length such as \"0.5 in\", found \"0.5\"");
    problem.where = {};
    CHECK(describe(problem) == "expected a length such as \"0.5 in\", found \"0.5\"");
}

TEST_CASE("a result is its value or all of its problems")
{
    const Result<int> good = 3;
    REQUIRE(good);
    CHECK(*good == 3);
    const Problem first{{"a", 1, 1}, "x", "y"};
    const Problem second{{"a", 2, 1}, "x", "z"};
    const Result<int> bad = failed(Problems{first, second});
    REQUIRE_FALSE(bad);
    CHECK(bad.error() == Problems{first, second});
    CHECK(Result<int>(failed(first)).error() == Problems{first});
}
