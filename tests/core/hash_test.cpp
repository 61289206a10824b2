#include "core/hash.hpp"

#include <catch2/catch.hpp>

#include <set>
#include <string>

using namespace flapdoor;

namespace {

std::uint64_t of(const auto&... values)
{
    Fingerprint print;
    (print.add(values), ...);
    return print.value();
}

enum class Color : std::uint8_t { red, green };

}

TEST_CASE("a fingerprint tells apart values, their order and their number")
{
    const std::set<std::uint64_t> prints{of(), of(0), of(0, 0), of(1, 2), of(2, 1), of(1.0), of(-1.0), of(0.0), of(-0.0), of(1.0F)};
    // 0 and 0.0 have the same bits; everything else differs.
    CHECK(prints.size() == 9);
    CHECK(of(0) == of(0.0));
    CHECK(of(Color::green) == of(1));
}

TEST_CASE("texts of a list do not run into one another")
{
    const auto print = [](std::string_view a, std::string_view b) {
        Fingerprint both;
        both.add_text(a);
        both.add_text(b);
        return both.value();
    };
    CHECK(print("ab", "c") != print("a", "bc"));
    CHECK(print("", "x") != print("x", ""));
    CHECK(fingerprint_of("abc") != fingerprint_of("abd"));
    CHECK(fingerprint_of(std::string_view("a\0b", 3)) != fingerprint_of(std::string_view("a\0c", 3)));
}

TEST_CASE("a fingerprint is the same on every build")
{
    // Committed: run files carry these values, so they may change only with the run file's version.
    CHECK(to_hex(fingerprint_of("flapdoor")) == "95e506c5663f1748");
    CHECK(to_hex(of(1, 2.5, 3.5F)) == "022d281ec983f38d");
}

TEST_CASE("hexadecimal has sixteen lower-case digits")
{
    CHECK(to_hex(0) == "0000000000000000");
    CHECK(to_hex(0x0123456789abcdefULL) == "0123456789abcdef");
    CHECK(to_hex(~0ULL) == "ffffffffffffffff");
}
