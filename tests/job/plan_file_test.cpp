#include "random_card.hpp"
#include "shipped.hpp"

#include "core/hash.hpp"
#include "text/fingerprint_fields.hpp"
#include "text/writing.hpp"

#include <rapidcheck.h>

#include <array>
#include <set>
#include <string>

namespace flapdoor::job {

namespace {

/// A plan of the given cards for the shipped scenario.
std::string plan_of(const std::string& cards) { return "format = 1\nscenario = \"back-bedroom\"\ntitle = \"Test\"\ncard = [\n" + cards + "]\n"; }

std::string problems_of(const std::string& cards) { return told(wrong(read_plan(plan_of(cards), "plan.toml", shipped_scenario()))); }

std::uint64_t bits_of(const WorkPlan& plan)
{
    Fingerprint print;
    text::fingerprint_fields(print, plan);
    return print.value();
}

constexpr const char* a_counter = R"(
[[counter]]
id = "shelf"
title = "Shelf"
zone = "bedroom"
west = "9 ft"
south = "2 ft"
width = "1 ft"
depth = "5 ft"
)";

}

TEST_CASE("whatever a card names must be there, and what is near is named")
{
    struct Slip {
        std::string card;
        std::string where;      ///< a piece of the card; the problem is at the `^`
        std::string problem;
    };
    const std::array slips{
        Slip{R"({ do = "wipe-sill", by = ["rosa"], sill = "sil-1", cloth = "wipes" })", R"(sill = ^"sil-1")",
             "the id of a sill of scenario `back-bedroom`, perhaps `sill-1`, found `sil-1`"},
        Slip{R"({ do = "wait", by = ["rosa", "leo"], time = "5 min" })", R"("rosa", ^"leo")", "the id of a member of the crew of scenario `back-bedroom`, perhaps `lee`, found `leo`"},
        Slip{R"({ do = "close-window", by = ["lee"], opening = "window-3" })", R"(opening = ^"window-3")",
             "the id of an opening of scenario `back-bedroom`, perhaps `window-1`, found `window-3`"},
        Slip{R"({ do = "move-out", by = ["lee"], object = "piano" })", R"(object = ^"piano")", "the id of an object of scenario `back-bedroom`, found `piano`"},
        Slip{R"({ do = "wipe-counter", by = ["rosa"], counter = "shelf", cloth = "wipes" })", R"(counter = ^"shelf")",
             "the id of a counter of scenario `back-bedroom`, found `shelf`"},
        Slip{R"({ do = "disturb-paint", by = ["lee"], component = "casing", technique = "pry" })", R"(component = ^"casing")",
             "the id of a component of scenario `back-bedroom`, perhaps `casing-1`, found `casing`"},
        Slip{R"({ do = "lay-runner", by = ["lee"], zone = "halll", sheeting = "poly" })", R"(zone = ^"halll")",
             "the id of a zone of scenario `back-bedroom`, perhaps `hall`, found `halll`"},
        Slip{R"({ do = "stage-tools", by = ["lee"], supplies = ["poly", "tap"] })", R"("poly", ^"tap")",
             "the id of a supply of scenario `back-bedroom`, perhaps `tape`, found `tap`"},
        Slip{R"({ do = "train-worker", by = ["rosa"], worker = "le" })", R"(worker = ^"le")",
             "the id of a member of the crew of scenario `back-bedroom`, perhaps `lee`, found `le`"},
    };
    std::string all;
    std::string expected;
    for (const Slip& slip : slips) {
        const Place place = place_in(plan_of(slip.card + ",\n"), slip.where, "plan.toml");
        CHECK(problems_of(slip.card + ",\n") == "plan.toml:" + std::to_string(place.line) + ":" + std::to_string(place.column) + ": expected " + slip.problem + "\n");
        all += slip.card + ",\n";
        expected += "plan.toml:" + std::to_string(5 + (&slip - slips.data())) + ":" + std::to_string(place.column) + ": expected " + slip.problem + "\n";
    }
    CHECK(problems_of(all) == expected);    // all at once
}

TEST_CASE("an unknown kind of step is told with the nearest, without blame for its other keys")
{
    CHECK(problems_of("{ do = \"wipe-sil\", by = [\"rosa\"], sill = \"sill-1\", cloth = \"wipes\" },\n")
          == "plan.toml:5:8: expected `do` to be a known word, the nearest is \"wipe-sill\", found \"wipe-sil\"\n");
}

TEST_CASE("keys of a card are those of its kind of step")
{
    CHECK(problems_of("{ do = \"close-window\", by = [\"lee\"], opening = \"window-1\", reach = \"6 ft\" },\n").find("found unknown key \"reach\"") != std::string::npos);
    CHECK(problems_of("{ do = \"lay-floor-sheet\", by = [\"lee\"], sheeting = \"poly\", layers = 4 },\n")
          == "plan.toml:5:69: expected `layers` to be a whole number from 1 to 3, found 4\n");
    CHECK(problems_of("{ do = \"wait\", by = [\"lee\"] },\n") == "plan.toml:5:1: expected the key `time`, found a table without it\n");
    CHECK(problems_of("{ do = \"wait\", by = [], time = \"5 min\" },\n") == "plan.toml:5:21: expected `by` to be a list with at least one entry, found an empty list\n");
}

TEST_CASE("a label stands once in a plan, and a person once in a team")
{
    CHECK(problems_of("{ do = \"wait\", by = [\"lee\"], time = \"5 min\", label = \"rest\" },\n{ do = \"wait\", by = [\"lee\"], time = \"5 min\", label = \"rest\" },\n")
          == "plan.toml:6:54: expected a label that no earlier card has, found `rest` a second time\n");
    CHECK(problems_of("{ do = \"wait\", by = [\"lee\", \"lee\"], time = \"5 min\" },\n") == "plan.toml:5:29: expected each person once, found `lee` a second time\n");
}

TEST_CASE("a plan fills no more bags than the scenario has")
{
    const Scenario scenario = shipped_scenario("\n[[supply]]\nid = \"last-bags\"\ntitle = \"Last bags\"\nkind = \"bag\"\ncount = 2\n");
    const std::string two = "{ do = \"bag-debris\", by = [\"lee\"], bag = \"a\", kind = \"last-bags\" },\n"
                            "{ do = \"bag-debris\", by = [\"lee\"], bag = \"a\", kind = \"last-bags\" },\n"
                            "{ do = \"bag-sheeting\", by = [\"lee\"], bag = \"b\", kind = \"last-bags\" },\n";
    CHECK(read_plan(plan_of(two), "plan.toml", scenario).has_value());
    const std::string three = two + "{ do = \"bag-debris\", by = [\"lee\"], bag = \"c\", kind = \"last-bags\" },\n";
    CHECK(told(wrong(read_plan(plan_of(three), "plan.toml", scenario))) == "plan.toml:8:42: expected at most 2 bags of `last-bags`, found `c`, one more\n");
}

TEST_CASE("a plan full of mistakes is told two hundred of them")
{
    std::string cards;
    for (int i = 0; i < 3000; ++i) cards += "{ do = \"wait\", by = [\"nobody\"], time = \"5 min\", label = \"rest\" },\n";
    CHECK(wrong(read_plan(plan_of(cards), "plan.toml", shipped_scenario())).size() == 200);
}

TEST_CASE("a plan made for another scenario is refused")
{
    const std::string text = with(shipped_text("good"), "\"back-bedroom\"", "\"front-hall\"");
    CHECK(told(wrong(read_plan(text, "good.toml", shipped_scenario()))) == "good.toml:3:12: expected a plan for scenario `back-bedroom`, found one for `front-hall`\n");
}

TEST_CASE("a plan that breaks off anywhere is told or read, never worse")
{
    const std::string whole = shipped_text("good");
    const Scenario scenario = shipped_scenario();
    const std::size_t end_of_cards = whole.rfind(']');
    for (std::size_t length = 0; length <= end_of_cards; length += 31) {
        const Result<WorkPlan> plan = read_plan(whole.substr(0, length), "short.toml", scenario);
        REQUIRE_FALSE(plan.has_value());    // its one list of cards is not closed
        CHECK(plan.error().front().where.file == "short.toml");
    }
}

TEST_CASE("a plan written and read again is the same plan", "[property]")
{
    const Scenario scenario = shipped_scenario(a_counter);
    std::set<std::string_view> kinds;
    const bool is_same = rc::check([&] {
        Dice dice(*rc::gen::arbitrary<std::uint64_t>());
        WorkPlan plan;
        plan.scenario = scenario.id;
        plan.title = "A \"quoted\" title, with \\ and umlauts: \u00fc";
        for (std::size_t n = 1 + dice.below(6); n > 0; --n) {
            plan.cards.push_back(random_card(dice, scenario));
            if (dice.flag()) plan.cards.back().label = "card " + std::to_string(n);
            kinds.insert(std::visit([](const auto& step) { return step.name; }, plan.cards.back().step));
        }
        const std::string written = text::write_toml(plan);
        const Result<WorkPlan> again = read_plan(written, "again.toml", scenario);
        if (!again) RC_FAIL(told(again.error()) + written);
        RC_ASSERT(bits_of(*again) == bits_of(plan));
        RC_ASSERT(text::write_toml(*again) == written);
    });
    CHECK(is_same);
    CHECK(kinds.size() > step_kinds * 9 / 10);
}

TEST_CASE("every kind of step can be written and read with random parameters")
{
    const Scenario scenario = shipped_scenario(a_counter);
    Dice dice(5);
    for (std::size_t kind = 0; kind < step_kinds; ++kind) {
        WorkPlan plan;
        plan.scenario = scenario.id;
        plan.title = "One card";
        plan.cards = {random_card(dice, scenario, kind)};
        INFO(text::NamesOf<Step>::names[kind]);
        CHECK(bits_of(sound(read_plan(text::write_toml(plan), "one.toml", scenario))) == bits_of(plan));
    }
}

TEST_CASE("shipped plans written and read again are the same")
{
    const Scenario scenario = shipped_scenario();
    for (const char* name : {"good", "careless"}) {
        const WorkPlan plan = shipped_plan(name, scenario);
        CHECK(bits_of(sound(read_plan(text::write_toml(plan), "again.toml", scenario))) == bits_of(plan));
    }
}

}
