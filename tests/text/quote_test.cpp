#include "text/quote.hpp"

#include "text/utf8.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <array>
#include <string>
#include <vector>

using namespace flapdoor;
using text::one_of;
using text::printable;
using text::quoted;

TEST_CASE("quoted text is cut by letters, not by bytes, and shows its controls")
{
    CHECK(quoted("0.5") == "\"0.5\"");
    CHECK(quoted("") == "\"\"");
    CHECK(quoted("ñandú", 3) == "\"ñan...\"");
    CHECK(quoted("abc", 3) == "\"abc\"");
    CHECK(quoted("a\nb\x1B\x07") == "\"a\\nb\\u001B\\u0007\"");
    CHECK(quoted("\u202Edrow") == "\"\\u202Edrow\"");
    CHECK(quoted("\xFF\xC3(") == "\"?" "?(\"");
    CHECK(printable("\u0085") == "\\u0085");
}

TEST_CASE("whatever bytes come in, what is printed is UTF-8 without controls", "[property]")
{
    CHECK(rc::check([](const std::vector<char>& bytes) {
        std::string shown = printable(std::string(bytes.begin(), bytes.end()));
        for (std::string_view rest = shown; !rest.empty();) {
            const text::Letter letter = text::first_letter(rest);
            RC_ASSERT((letter.code >= 0x20 && letter.code != 0x7F && letter.code != 0xFFFD));
            rest.remove_prefix(letter.bytes);
        }
    }));
}

TEST_CASE("words to choose from are listed, long lists with their rest counted")
{
    constexpr std::array<std::string_view, 3> three{"must", "should", "practice"};
    CHECK(one_of(three) == R"("must", "should" or "practice")");
    CHECK(one_of(std::span(three).first(1)) == R"("must")");
    CHECK(one_of({}).empty());
    const std::vector<std::string_view> many(15, "x");
    CHECK(one_of(many).ends_with(R"("x" and 3 more)"));
}
