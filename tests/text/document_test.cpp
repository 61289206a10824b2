#include "text/document.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <rapidcheck.h>

#include <chrono>
#include <cmath>
#include <limits>
#include <string>

using namespace flapdoor;
using text::Node;
using text::parse_document;
using text::Table;

namespace {

std::string first_problem(const std::string& toml)
{
    const Result<Node> node = parse_document(toml, "plan.toml");
    return node ? "read" : describe(node.error().front());
}

const Table& table(const Node& node) { return std::get<Table>(node.value); }

}

TEST_CASE("a document keeps every value with its place")
{
    const Result<Node> root = parse_document("title = \"Hall\"\nlayers = 3\n\n  share = 0.5\nis-wet = true\nby = [\"rosa\",\n  \"luis\"]\n", "hall.toml");
    REQUIRE(root);
    const Table& top = table(*root);
    CHECK(root->where == Place{"hall.toml", 1, 1});
    CHECK(std::get<std::string>(top.find("title")->value) == "Hall");
    CHECK(top.find("title")->where == Place{"hall.toml", 1, 9});
    CHECK(std::get<std::int64_t>(top.find("layers")->value) == 3);
    CHECK(std::get<double>(top.find("share")->value) == 0.5);
    CHECK(top.entries[2].where == Place{"hall.toml", 4, 3});
    CHECK(std::get<bool>(top.find("is-wet")->value));
    const auto& by = std::get<text::Array>(top.find("by")->value);
    CHECK(std::get<std::string>(by[1].value) == "luis");
    CHECK(by[1].where == Place{"hall.toml", 7, 3});
    CHECK(top.find("nobody") == nullptr);
}

TEST_CASE("keys come in the order of the file, not of the alphabet")
{
    const Result<Node> root = parse_document("zebra = 1\nant = 2\n[middle]\nlate = 1\nearly = 2\n[[bird]]\nx = 1\n[[bird]]\ny = 2\n", "f");
    REQUIRE(root);
    std::string keys;
    for (const auto& entry : table(*root).entries) keys += entry.key + " ";
    CHECK(keys == "zebra ant middle bird ");
    CHECK(table(table(*root).entries[2].value).entries[0].key == "late");

    const auto& birds = std::get<text::Array>(table(*root).find("bird")->value);
    REQUIRE(birds.size() == 2);
    CHECK(birds[1].where.line == 8);
}

TEST_CASE("dotted keys and inline tables become tables")
{
    const Result<Node> root = parse_document("a.b = 1\na.c = 2\nd = { e = 3 }\n", "f");
    REQUIRE(root);
    CHECK(table(*table(*root).find("a")).entries.size() == 2);
    CHECK(std::get<std::int64_t>(table(*table(*root).find("d")).find("e")->value) == 3);
}

TEST_CASE("a mistake in the writing is told with its place")
{
    CHECK(first_problem("a = 1\nb = \n") == "plan.toml:2:5: expected correct TOML, found a mistake: key-value pair: expected value, saw '\\n'");
    CHECK(first_problem("a = 1\na = 2\n") == "plan.toml:2:5: expected correct TOML, found a mistake: key-value pair: cannot redefine existing integer 'a'");
    CHECK(first_problem("x = \"open\n").starts_with("plan.toml:1:"));
    CHECK(first_problem("x = 5 ft\n").starts_with("plan.toml:1:"));
}

TEST_CASE("dates are refused, not-a-number is kept for the reader")
{
    CHECK(first_problem("start = 08:05:00\n") ==
          "plan.toml:1:9: expected text, a number, true or false, a list or a table, found a date or time without quotes");
    const Result<Node> root = parse_document("x = nan\ny = -inf\n", "f");
    REQUIRE(root);
    CHECK(std::isnan(std::get<double>(table(*root).find("x")->value)));
    CHECK(std::get<double>(table(*root).find("y")->value) == -std::numeric_limits<double>::infinity());
}

TEST_CASE("too deep, too large and too many are refused")
{
    const std::string deep = "a = " + std::string(33, '[') + std::string(33, ']');
    CHECK(first_problem(deep) == "plan.toml:1:37: expected at most 32 brackets inside one another, found more");
    CHECK(first_problem("a = " + std::string(30, '[') + std::string(30, ']')) == "read");

    std::string dotted = "k";
    for (int i = 0; i < 40; ++i) dotted += ".k";
    CHECK(first_problem(dotted + " = 1") == "plan.toml:1:64: expected at most 32 parts in a dotted key, found more");
    CHECK(first_problem("x = \"" + dotted + "\"") == "read");
    CHECK(first_problem("# " + dotted + "\nx = '''" + dotted + "\n" + std::string(40, '[') + "'''") == "read");

    std::string both = "a";
    for (int i = 0; i < 20; ++i) both += ".a";
    CHECK(first_problem(both + " = { " + both + " = 1 }").ends_with("expected at most 32 tables and lists inside one another, found more"));

    CHECK(first_problem(std::string(text::most_bytes + 1, '\n')) == "plan.toml: expected at most 8388608 bytes, found 8388609 bytes");

    std::string many = "a = [";
    for (int i = 0; i < 250'001; ++i) many += "1,";
    CHECK(first_problem(many + "]").ends_with("expected at most 250000 values in a file, found more"));
}

TEST_CASE("the costliest text within the limits is read or refused within seconds")
{
    std::string dotted;
    for (int i = 0; i < 49'000; ++i) dotted += fmt::format("a{}.b=1\n", i);
    for (int i = 0; i < 49'000; ++i) dotted += fmt::format("a{}.c=1\n", i);
    std::string headers;
    for (int i = 0; headers.size() < 1'000'000; ++i) headers += fmt::format("[t{}]\n", i);
    const auto start = std::chrono::steady_clock::now();
    CHECK(parse_document(dotted, "f").has_value());
    CHECK(parse_document(headers, "f").has_value());
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(30));
}

TEST_CASE("no bytes make the parser crash or throw", "[property]")
{
    CHECK(rc::check([](const std::string& bytes) {
        const Result<Node> node = parse_document(bytes, "f");
        RC_ASSERT((node.has_value() || !node.error().empty()));
    }));

    // Bytes that look like TOML get deeper into the parser.
    const std::string letters = "ab.=\"'[]{},#\n\\ 01e+-:Tuinf_\xC3\xB1\xFF";
    CHECK(rc::check([&](const std::vector<std::uint8_t>& picks) {
        std::string toml;
        for (const std::uint8_t pick : picks) toml += letters[pick % letters.size()];
        const Result<Node> node = parse_document(toml, "f");
        RC_ASSERT((node.has_value() || node.error().front().where.file == "f"));
    }));

    // A good file with one byte changed.
    const std::string good = "title = \"Hall\"\n[air.flow]\nx = [1, 2.5, { y = 'z' }]\n[[rule]]\nid = \"a\"\ntext = \"\"\"\nlong\n\"\"\"\n";
    CHECK(rc::check([&](std::uint8_t byte) {
        const auto at = static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(good.size())));
        std::string changed = good;
        changed[at] = static_cast<char>(byte);
        const Result<Node> node = parse_document(changed, "f");
        RC_ASSERT((node.has_value() || node.error().front().where.line >= 1));
    }));
}
