#include "text/field_table.hpp"

#include "examples.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace example;
using text::field_table;
using text::FieldRow;

namespace {

FieldRow row(const std::vector<FieldRow>& rows, std::string_view key)
{
    for (const FieldRow& candidate : rows)
        if (candidate.key == key) return candidate;
    FAIL("no row of that key: " << key);
    return {};
}

struct Branch {
    std::string leaf;
    std::vector<Branch> branches;
    static void fields(auto& self, auto&& visit)
    {
        visit("leaf", self.leaf);
        visit("branch", self.branches);
    }
};

}

TEST_CASE("a format page learns key, kind, default, range and meaning from the fields")
{
    CHECK(field_table<Sheet>() == std::vector<FieldRow>{
                                      {"title", "text", "", "", "what it is called", true},
                                      {"width", "a length such as \"0.5 in\"", "10 ft", "1 ft to 20 ft", "short side", false},
                                      {"layers", "a whole number", "1", "1 to 4", "", false},
                                  });
}

TEST_CASE("structs inside a struct are listed under their key")
{
    const auto rows = field_table<Everything>();
    CHECK(row(rows, "sheet").kind == "a table");
    CHECK(row(rows, "sheet.width").default_value == "10 ft");
    CHECK(row(rows, "spare").kind == "a list, each: a table");
    CHECK(row(rows, "spare[].layers").range == "1 to 4");
    CHECK(row(rows, "corner").kind == "a list of its values");
    CHECK(row(rows, "score").kind == "own spelling");
    CHECK(row(rows, "share").range == "0 to 1");
    CHECK(row(rows, "share").about == "part of the whole");
    CHECK(row(rows, "weight").kind == "one of \"light\", \"medium\", \"heavy\"");
    CHECK(row(rows, "weight").default_value == "medium");
    CHECK(row(rows, "flow").kind == "an air flow such as \"100 cfm\"");
    CHECK(row(rows, "flow").default_value.empty());
    CHECK(row(rows, "dust").range == "0 ug to 1 mg");
    CHECK(row(rows, "is-dry").kind == "true or false");
}

TEST_CASE("a variant is told by its alternatives, each with a page of its own")
{
    CHECK(row(field_table<Card>(), "do").kind == "one of \"lay-floor-sheet\", \"tape-seam\", \"rest\"");
    std::string names;
    text::each_alternative<Step>([&]<class A>(const A&) { names += std::string(A::name) + ":" + std::to_string(field_table<A>().size()) + " "; });
    CHECK(names == "lay-floor-sheet:1 tape-seam:1 rest:0 ");
}

TEST_CASE("a struct that holds its own kind ends")
{
    const auto rows = field_table<Branch>();
    CHECK(rows.size() == 10);
    CHECK(rows.back().key == "branch[].branch[].branch[].branch[].branch");
}
