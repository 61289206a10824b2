#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <map>
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
    CHECK(text::say("Looking clean is not being clean: lead dust that matters cannot be seen.") == "Looking clean is not being clean: lead dust that matters cannot be seen.");
    CHECK(text::say_number("{} step", "{} steps", 1) == "1 step");
    CHECK(text::say_number("{} step", "{} steps", 0) == "0 steps");
}

TEST_CASE("a sentence is looked up in the language in force")
{
    {
        const Speaking spanish(text::Language::spanish);
        CHECK(text::say("Looking clean is not being clean: lead dust that matters cannot be seen.") == "Verse limpio no es estar limpio: el polvo de plomo que importa no se ve.");
        CHECK(text::say_number("{} step", "{} steps", 1) == "1 paso");
        CHECK(text::say_number("{} step", "{} steps", 7) == "7 pasos");
    }
    CHECK(text::say("Looking clean is not being clean: lead dust that matters cannot be seen.") == "Looking clean is not being clean: lead dust that matters cannot be seen.");
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

TEST_CASE("a language is asked for by its code, or by the environment in gettext's order")
{
    CHECK(text::language_asked("es") == text::Language::spanish);
    CHECK(text::language_asked("es_MX.UTF-8") == text::Language::spanish);
    CHECK(text::language_asked("est") == text::Language::english);
    CHECK(text::language_asked("en") == text::Language::english);
    std::map<std::string, std::string> before;
    for (const char* name : {"LANGUAGE", "LC_ALL", "LC_MESSAGES", "LANG"}) {
        if (const char* set = std::getenv(name)) before[name] = set;
        unsetenv(name);
    }
    CHECK(text::language_asked() == text::Language::english);
    setenv("LANG", "es_US.UTF-8", 1);
    CHECK(text::language_asked() == text::Language::spanish);
    setenv("LC_ALL", "C", 1);
    CHECK(text::language_asked() == text::Language::english);
    for (const char* name : {"LANGUAGE", "LC_ALL", "LC_MESSAGES", "LANG"}) unsetenv(name);
    for (const auto& [name, value] : before) setenv(name.c_str(), value.c_str(), 1);
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
