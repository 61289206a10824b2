#include "small_bank.hpp"

#include "text/writing.hpp"

#include <map>
#include <set>

namespace flapdoor::quiz {

TEST_CASE("every shipped bank is in order, in both languages")
{
    const auto paths = shipped_banks();
    REQUIRE_FALSE(paths.empty());
    std::set<std::string> ids;
    for (const std::string& path : paths) {
        INFO(path);
        const Bank bank = sound(load_bank(path, shipped_scenarios()));
        CHECK(ids.insert(bank.id).second);
        CHECK_FALSE(bank.questions.empty());
        for (const Place& place : without_spanish(bank)) FAIL_CHECK(place.file << ":" << place.line << ": no Spanish");
    }
}

TEST_CASE("the sample bank has two questions of every kind that a file can hold in full")
{
    std::map<std::string, int> count;
    for (const Question& question : shipped_bank("sample").questions) ++count[std::string(kind_name(question))];
    for (const char* kind : {"choose-one", "choose-several", "put-in-order", "number", "point-at-plan", "spot-the-fault", "predict"}) {
        INFO(kind);
        CHECK(count[kind] == 2);
    }
}

TEST_CASE("a bank that is written out reads back the same")
{
    const Bank bank = shipped_bank("sample");
    const std::string text = text::write_toml(bank);
    const Bank again = sound(read_bank(text, "again.toml", shipped_scenarios()));
    CHECK(text::write_toml(again) == text);
    CHECK(again.questions.size() == bank.questions.size());
    CHECK(again.questions.front().text == bank.questions.front().text);
}

TEST_CASE("what is wrong in a bank is told all at once, each with its place and the nearest known word")
{
    const std::string text = R"(format = 1
id = "b"
title = "B"
edition = "none"
[[question]]
id = "one"
kind = "choose-on"
topic = "containmet"
level = "know"
cite = "x"
text = { en = "A" }
why = 7
[[question]]
id = "two"
kind = "number"
topic = "dust"
level = "knwo"
cite = "x"
text = "T"
why = "W"
answer = "six feet"
[[question]]
id = "three"
kind = "choose-one"
topic = "dust"
level = "know"
cite = "x"
text = "T"
why = "W"
optoin = 1
)";
    const auto bank = read_bank(text, "b.toml", shipped_scenarios());
    REQUIRE_FALSE(bank.has_value());
    const std::string lines = told(bank.error());
    INFO(lines);
    CHECK(lines.find("b.toml:7:8:") != std::string::npos);
    CHECK(lines.find("choose-one") != std::string::npos);
    CHECK(lines.find("b.toml:8:9:") != std::string::npos);
    CHECK(lines.find("\"containment\"") != std::string::npos);
    CHECK(lines.find("b.toml:11:8:") != std::string::npos);
    CHECK(lines.find("`es`") != std::string::npos);
    CHECK(lines.find("b.toml:12:7:") != std::string::npos);
    CHECK(lines.find("b.toml:17:9:") != std::string::npos);
    CHECK(lines.find("b.toml:21:10:") != std::string::npos);
    CHECK(lines.find("b.toml:30:1:") != std::string::npos);
    CHECK(lines.find("`option`") != std::string::npos);
    CHECK(bank.error().size() >= 7);
}

namespace {

std::string problems_of(const std::string& question)
{
    const auto bank = read_bank(bank_with(question), "b.toml", shipped_scenarios());
    REQUIRE_FALSE(bank.has_value());
    return told(bank.error());
}

bool tells(const std::string& lines, std::string_view piece)
{
    INFO(lines);
    CHECK(lines.find(piece) != std::string::npos);
    return lines.find(piece) != std::string::npos;
}

}

TEST_CASE("choices without one right answer, without names for mistakes or twice the same are refused")
{
    const std::string lines = problems_of("kind = \"choose-one\"\n[[question.option]]\nid = \"a\"\ntext = \"A\"\n[[question.option]]\nid = \"a\"\ntext = \"A\"\nmisconception = \"m\"\n");
    tells(lines, "exactly one right option, found 0");
    tells(lines, "a `misconception` on a wrong option");
    tells(lines, "an option id of its own, found \"a\" a second time");
    tells(lines, "b.toml:14:6: expected a `told` on a wrong option");
    tells(problems_of("kind = \"choose-several\"\n[[question.option]]\nid = \"a\"\ntext = \"A\"\nmisconception = \"m\"\ntold = \"T\"\n[[question.option]]\nid = \"b\"\ntext = \"B\"\nmisconception = \"m\"\ntold = \"T\"\n"),
          "at least one right option");
}

TEST_CASE("orders that run in a circle or name no card are refused")
{
    const std::string cards = "kind = \"put-in-order\"\n[[question.card]]\nid = \"mist\"\ntext = \"M\"\n[[question.card]]\nid = \"fold\"\ntext = \"F\"\n";
    tells(problems_of(cards + "[[question.rule]]\norder = [\"mist\", \"fold\"]\ntold = \"T\"\n[[question.rule]]\norder = [\"fold\", \"mist\"]\ntold = \"T\"\n"), "a cycle: mist before fold");
    tells(problems_of(cards + "[[question.rule]]\norder = [\"mits\", \"fold\"]\ntold = \"T\"\n"), "a known card, the nearest is \"mist\", found \"mits\"");
}

TEST_CASE("a wrong figure that the tolerance lets pass is refused, and so is one of another kind")
{
    const std::string wrong = "misconception = \"m\"\ntold = \"T\"\n";
    tells(problems_of("kind = \"number\"\nanswer = \"6 ft\"\ntolerance = \"5 %\"\n[[question.wrong]]\nfigure = \"1.83 m\"\n" + wrong), "a wrong figure outside the tolerance");
    tells(problems_of("kind = \"number\"\nanswer = \"6 ft\"\n[[question.wrong]]\nfigure = \"6 ft2\"\n" + wrong), "a figure of the answer's kind, length");
    tells(problems_of("kind = \"number\"\nanswer = \"6 ft\"\ntolerance = \"1 min\"\n"), "a tolerance in the kind of the answer");
}

TEST_CASE("regions name things that the scenario has")
{
    const std::string region = "[[question.region]]\nid = \"r\"\ntext = \"R\"\nright = true\n";
    tells(problems_of("kind = \"point-at-plan\"\nscenario = \"back-bedroom\"\n" + region + "thing = \"dor\"\n"), "a known thing of the scenario, the nearest is \"door\"");
    tells(problems_of("kind = \"point-at-plan\"\nscenario = \"back-bedrom\"\n" + region + "thing = \"door\"\n"), "the id of a scenario");
    tells(problems_of("kind = \"point-at-plan\"\nscenario = \"../back-bedroom\"\n" + region + "thing = \"door\"\n"), "the id of a scenario");
    tells(problems_of("kind = \"point-at-plan\"\nscenario = \"back-bedroom\"\n" + region), "either a `thing` or a place `at`, found neither");
}

TEST_CASE("texts in two languages have the same blanks, and sentences without Spanish are found")
{
    const std::string number = "kind = \"number\"\nanswer = \"4\"\n";
    std::string text = bank_with(number);
    text.replace(text.find("\"Q\""), 3, "{ en = \"How many for {area}?\", es = \"¿Cuántos?\" }");
    const auto bank = read_bank(text, "b.toml", shipped_scenarios());
    REQUIRE_FALSE(bank.has_value());
    tells(told(bank.error()), "the same blanks in both languages");

    text = bank_with(number);
    text.replace(text.find("\"Q\""), 3, "\"How many cloths?\"");
    CHECK(without_spanish(sound(read_bank(text, "b.toml", shipped_scenarios()))).size() == 1);
    CHECK(without_spanish(sound(read_bank(bank_with(number), "b.toml", shipped_scenarios()))).empty());
}

}
