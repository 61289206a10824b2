#include "text/language.hpp"
#include "text/sentence.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using text::sentence;

TEST_CASE("a kept sentence is put together from its parts, in English whatever is spoken")
{
    const text::Sentence card = sentence("card {} ({})", 5, "Wait");
    const text::Sentence told = sentence("{1} began before {0} was done.", "the end", card);
    CHECK(told.english() == "card 5 (Wait) began before the end was done.");
    CHECK(told.said() == told.english());
    CHECK(told == sentence("{1} began before {0} was done.", "the end", sentence("card {} ({})", 5, "Wait")));
    CHECK_FALSE(told == sentence("{1} began before {0} was done.", "the end", sentence("card {} ({})", 6, "Wait")));
    CHECK(text::Sentence().empty());
}

TEST_CASE("a name with braces is no pattern")
{
    CHECK(text::Sentence("the {} room {{").english() == "the {} room {{");
    CHECK(sentence("{} is out", "the {} room").english() == "the {} room is out");
}

TEST_CASE("a sentence begins with a large letter, with or without an accent")
{
    CHECK(text::as_sentence("card 5") == "Card 5");
    CHECK(text::as_sentence("\u00FAnica") == "\u00DAnica");
    CHECK(text::as_sentence("\"Wait\"") == "\"Wait\"");
    CHECK(text::as_sentence("\u00F7") == "\u00F7");
    CHECK(text::as_sentence("").empty());
}
