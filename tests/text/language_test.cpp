#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace flapdoor;

namespace {

// Whatever a test speaks, the next one begins in English.
struct Speaking {
    explicit Speaking(text::Language language) { text::speak(language, FLAPDOOR_CATALOGS); }
    ~Speaking() { text::speak(text::Language::english); }
};

}

TEST_CASE("English needs no catalog")
{
    CHECK(text::say("Training model, not a clearance prediction.") == "Training model, not a clearance prediction.");
    CHECK(text::say_number("{} card", "{} cards", 1) == "1 card");
    CHECK(text::say_number("{} card", "{} cards", 0) == "0 cards");
}

TEST_CASE("a sentence is looked up in the language in force")
{
    {
        const Speaking spanish(text::Language::spanish);
        CHECK(text::say("Training model, not a clearance prediction.") == "Modelo de práctica; no predice el resultado de un análisis de aprobación.");
        CHECK(text::say_number("{} card", "{} cards", 1) == "1 tarjeta");
        CHECK(text::say_number("{} card", "{} cards", 7) == "7 tarjetas");
    }
    CHECK(text::say("Training model, not a clearance prediction.") == "Training model, not a clearance prediction.");
}

TEST_CASE("what no catalog holds is shown in English")
{
    const Speaking spanish(text::Language::spanish);
    const std::string unknown = "no such sentence anywhere";
    CHECK(text::say(unknown) == unknown);
    CHECK(text::say_number("{} such thing", "{} such things", 3) == "3 such things");
    CHECK(text::say_of("somewhere", "word") == "word");
    CHECK(text::say("").empty());
}

TEST_CASE("blanks are filled in order or by number, and what cannot be filled stays")
{
    CHECK(text::say_with("{} of {}", 2, "seven") == "2 of seven");
    CHECK(text::say_with("{1} before {0}", "dust", "sheeting") == "sheeting before dust");
    CHECK(text::say_with("{{}} and {}", 1) == "{} and 1");
    CHECK(text::say_with("{} and {}", 1) == "1 and {}");
    CHECK(text::say_with("{9} {nine} {", 1) == "{9} {nine} {");
    CHECK(text::say_with("") == "");
}
