#include "rules/layers.hpp"

#include "rules/marking_sheet.hpp"
#include "small_job.hpp"
#include "text/field_types.hpp"
#include "text/writing.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

const std::string folder = FLAPDOOR_SOURCE_DIR "/scenarios/rules/";

template <class T>
T sound(Result<T> result)
{
    if (!result)
        for (const Problem& problem : result.error()) UNSCOPED_INFO(describe(problem));
    REQUIRE(result);
    return std::move(*result);
}

RuleBook shipped(const std::string& name) { return sound(load_rule_book(folder + name + ".toml")); }

std::string book_of(const std::string& id, const std::string& more) { return "format = 1\nid = \"" + id + "\"\ntitle = \"T\"\nedition = \"2026\"\n" + more; }

std::string rule(const std::string& id, const std::string& when, const std::string& more = "")
{
    return "[[rule]]\nid = \"" + id + "\"\nsays = \"s\"\nreason = \"w\"\ncite = \"c\"\nclass = \"must\"\nweight = 3\n" + more + "\nwhen = { " + when + " }\n";
}

/// The same with its standing given, e.g. `class = "should"`.
std::string standing_rule(const std::string& id, const std::string& when, const std::string& standing)
{
    return "[[rule]]\nid = \"" + id + "\"\nsays = \"s\"\nreason = \"w\"\nweight = 1\n" + standing + "\nwhen = { " + when + " }\n";
}

std::string upper(const std::string& over, const std::string& rules) { return book_of("u", "over = \"" + over + "\"\n" + rules); }

const std::string below = book_of("low", rule("sweep", R"(never = "sweep-floor")", "critical = true") + rule("signs", R"(before = ["post-signs", "first-dust"])"));

std::string problems(const std::string& upper)
{
    const auto both = read_layers({{"low.toml", below}, {"up.toml", upper}});
    if (both) return "none";
    std::string all;
    for (const Problem& problem : both.error()) all += (all.empty() ? "" : "\n") + describe(problem);
    return all;
}

}

TEST_CASE("a change gives a rule below other points and leaves the rest of it")
{
    const RuleBook both = sound(read_layers({{"low.toml", below}, {"up.toml", book_of("up", "over = \"low\"\n[[change]]\nrule = \"signs\"\nwhy = \"w\"\nweight = 6\ncritical = true\n")}}));
    REQUIRE(both.find("signs"));
    CHECK(both.find("signs")->weight == 6);
    CHECK(both.find("signs")->is_critical);
    CHECK(both.find("signs")->says == "s");
    CHECK(both.find("sweep")->weight == 3);
    CHECK(both.changes.empty());
    CHECK_FALSE(both.is_layer());
}

TEST_CASE("what is wrong with a layer is told with its place, all at once")
{
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sings\"\nwhy = \"w\"\nweight = 6\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\nweight = 1\n"))
          == "up.toml:7:8: expected a rule of the book below, the nearest is \"signs\", found \"sings\"\n"
             "up.toml:11:8: expected `loosens = true` where a rule asks less than the must-rule \"sweep\" below, found weight 1 instead of 3");
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\ncritical = false\n")).find("no longer critical") != std::string::npos);
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\ncritical = false\nloosens = true\n")) == "none");
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\n")).find("`weight`, `class` or `critical` in a change") != std::string::npos);
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\nweight = 4\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\nweight = 5\n")).find("each rule changed once") != std::string::npos);
    CHECK(problems(book_of("up", "over = \"low\"\n[[change]]\nrule = \"sweep\"\nwhy = \"w\"\nweight = 4\n" + rule("sweep", R"(never = "sweep-floor")", "critical = true"))).find("either changed or replaced") != std::string::npos);
    CHECK(problems(book_of("up", "[[change]]\nrule = \"sweep\"\nwhy = \"w\"\nweight = 4\n")).find("`over` in a book that changes rules") != std::string::npos);
    CHECK(problems(book_of("up", "over = \"low\"\n")) == "up.toml:5:8: expected at least one rule, found none");
    CHECK(problems(book_of("up", "over = \"high\"\n" + rule("x", R"(never = "open-window")"))) == "up.toml:5:8: expected a book that lies on \"low\", found one for \"high\"");
    CHECK(problems(book_of("up", rule("x", R"(never = "open-window")"))) == "up.toml: expected a book that lies on \"low\", found \"up\", which stands alone (no `over`)");
}

TEST_CASE("a layer cannot be marked against without the book below it")
{
    const auto alone = read_layers({{"up.toml", book_of("up", "over = \"low\"\n" + rule("x", R"(never = "open-window")"))}});
    REQUIRE_FALSE(alone);
    CHECK(describe(alone.error().front()) == "up.toml:5:8: expected the book \"low\" below this one, found this one as the lowest");
    CHECK_FALSE(read_layers({}));
}

TEST_CASE("books can lie three deep, each on what is below it")
{
    const std::string middle = book_of("mid", "over = \"low\"\n" + rule("x", R"(never = "open-window")"));
    const std::string top = book_of("top", "over = \"mid\"\n[[change]]\nrule = \"x\"\nwhy = \"w\"\nweight = 4\n[[change]]\nrule = \"signs\"\nwhy = \"w\"\nweight = 5\n");
    const RuleBook all = sound(read_layers({{"low.toml", below}, {"mid.toml", middle}, {"top.toml", top}}));
    CHECK(all.rules.size() == 3);
    CHECK(all.find("x")->weight == 4);
    CHECK(all.find("signs")->weight == 5);
    CHECK_FALSE(read_layers({{"low.toml", below}, {"top.toml", top}, {"mid.toml", middle}}));
}

TEST_CASE("what a layer does is told rule by rule")
{
    const std::string upper = book_of("up", "over = \"low\"\n[[change]]\nrule = \"signs\"\nwhy = \"they were stolen twice\"\nweight = 6\ncritical = true\n" +
                                                rule("sweep", R"(never = { step = "sweep-floor", by = "trained-worker" })", "critical = true") + rule("x", R"(never = "open-window")"));
    const auto lines = layer_lines(sound(read_rule_book(below, "low.toml")), sound(read_rule_book(upper, "up.toml")));
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].change == LayerChange::changed);
    CHECK(lines[0].what == "weight 3 -> 6, now critical: they were stolen twice");
    CHECK(lines[0].where == Place{"up.toml", 7, 8});
    CHECK(lines[1].change == LayerChange::replaced);
    CHECK(lines[1].what == "another condition");
    CHECK(lines[2].change == LayerChange::added);
    CHECK(lines[2].what == "s (must, weight 3)");
}

TEST_CASE("the cut and the cases outside come from the upper book where it has its own")
{
    const std::string cut = "[passing]\nscore = 90\nmost-lost = 5\n";
    const std::string outside = "[[outside]]\nwhy = \"no carpet\"\napplies = { unless = [\"has-carpet\"] }\n";
    const std::string own = rule("x", R"(never = "open-window")");
    const RuleBook both = sound(read_layers({{"low.toml", below}, {"up.toml", book_of("up", "over = \"low\"\n" + cut + outside + own)}}));
    REQUIRE(both.passing);
    CHECK(both.passing->score == 90);
    REQUIRE(both.outside.size() == 1);
    const MarkingSheet sheet = marking_sheet(both, small_scenario(), good_job().log());
    CHECK(sheet.outside == "no carpet");
    CHECK(sheet.wanted == 0);
    CHECK(sheet.is_passed);
    const RuleBook third = sound(read_layers({{"low.toml", book_of("low", cut + own)}, {"up.toml", book_of("up", "over = \"low\"\n" + rule("y", R"(never = "sweep-floor")"))}}));
    CHECK(third.passing->most_lost == 5);
}

TEST_CASE("the shipped firm's book lies on the federal one and asks more of the same job")
{
    const RuleBook federal = shipped("federal");
    const RuleBook firm = shipped("our-firm");
    const RuleBook both = sound(layered(federal, firm));
    CHECK(both.rules.size() > federal.rules.size());
    CHECK(both.find("bag-outside-clean")->weight > federal.find("bag-outside-clean")->weight);

    SmallJob job = good_job();
    job.at("out-1").measured = {truth("soles-cleaned", "ben", true), truth("clothes-cleaned", "ben", true), truth("sealed", "bag-1", true), truth("skin-cleaned", "bag-1", false)};
    const MarkingSheet lax = marking_sheet(federal, small_scenario(), job.log());
    const MarkingSheet strict = marking_sheet(both, small_scenario(), job.log());
    CHECK(lax.lost == whole_points(3));
    CHECK(strict.lost > lax.lost);
    CHECK(strict.wanted > lax.wanted);
    CHECK(strict.book.find("over Federal") != std::string::npos);
}

TEST_CASE("assisted housing counts dry scraping, which the federal book does not")
{
    const RuleBook federal = shipped("federal");
    const RuleBook assisted = sound(layered(federal, shipped("assisted-housing")));
    SmallJob job = good_job();
    job.step<job::DisturbPaint>("scrape").is_misted = false;        // K-43: 12 sq ft
    CHECK(marking_sheet(federal, small_scenario(), job.log()).lost == Quarters{});
    const MarkingSheet sheet = marking_sheet(assisted, small_scenario(), job.log());
    CHECK(sheet.lost == whole_points(3));
    REQUIRE(sheet.lines.size() == 1);
    CHECK(sheet.lines.front().rule == "paint-kept-damp");
    CHECK(sheet.lines.front().cite.starts_with("24 CFR 35.140"));
    // K-14: up to 6 sq ft are minor under the renovation rule; here safe practices are due beyond 2 sq ft.
    job::Scenario small = small_scenario();
    small.components.front().area = 3.0_ft2;
    CHECK(marking_sheet(federal, small, job.log()).wanted == 0);
    CHECK(marking_sheet(assisted, small, job.log()).lost == whole_points(3));
    small.components.front().area = 2.0_ft2;
    CHECK(marking_sheet(assisted, small, job.log()).wanted == 0);
}

TEST_CASE("laid books are written as one that reads back the same")
{
    const RuleBook both = sound(layered(shipped("federal"), shipped("our-firm")));
    const std::string text = text::write_toml(both);
    const RuleBook again = sound(read_rule_book(text, "again.toml"));
    CHECK(text::write_toml(again) == text);
    const job::RunLog log = good_job().without("mist").without("pad").log();
    CHECK(marking_sheet(again, small_scenario(), log).lost == marking_sheet(both, small_scenario(), log).lost);
}

TEST_CASE("a layered book adds rules and may ask more")
{
    const RuleBook base = sound(read_rule_book(book_of("b", rule("a", R"(never = "sweep-floor")") + rule("b", R"(before = ["post-signs", "first-dust"])")), "b.toml"));
    const auto over = read_rule_book(upper("b", rule("c", R"(never = { step = "disturb-paint", with = { technique = "hand-sand" } })") +
                                                    "[[rule]]\nid = \"a\"\nsays = \"s\"\nreason = \"w\"\nweight = 5\nclass = \"must\"\ncite = \"c\"\nwhen = { never = \"sweep-floor\" }\n"),
                                     "u.toml");
    REQUIRE(over);
    const auto both = layered(base, *over);
    REQUIRE(both);
    CHECK(both->rules.size() == 3);
    CHECK(both->find("a")->weight == 5);
    CHECK(both->title == "T over T");
}

TEST_CASE("a layered book that asks less than a must-rule has to say so")
{
    const RuleBook base = sound(read_rule_book(book_of("b", standing_rule("a", R"(never = "sweep-floor")", "class = \"must\"\ncite = \"c\"\ncritical = true")), "b.toml"));
    const auto less = [&](const std::string& more) {
        const auto over = read_rule_book(upper("b", standing_rule("a", R"(never = "sweep-floor")", more)), "u.toml");
        REQUIRE(over);
        const auto both = layered(base, *over);
        return both ? std::string("fine") : both.error().front().found;
    };
    CHECK(less("class = \"should\"") == "class should instead of must");
    CHECK(less("class = \"must\"\ncite = \"c\"") == "no longer critical");
    CHECK(less("class = \"must\"\ncite = \"c\"\ncritical = true") == "fine");
    CHECK(less("class = \"should\"\nloosens = true") == "fine");
}

TEST_CASE("a layered book for another book, or one that contradicts it, is refused")
{
    const RuleBook base = sound(read_rule_book(book_of("b", rule("a", R"(before = ["mist-sheeting", "fold-sheeting"])")), "b.toml"));
    const RuleBook stranger = read_rule_book(upper("x", rule("c", R"(never = "sweep-floor")")), "u.toml").value();
    CHECK_FALSE(layered(base, stranger));
    const RuleBook contrary = read_rule_book(upper("b", rule("c", R"(before = ["fold-sheeting", "mist-sheeting"])")), "u.toml").value();
    CHECK_FALSE(layered(base, contrary));
    const RuleBook dangling = read_rule_book(upper("b", rule("c", R"(never = "sweep-floor")", "follows-from = [\"zz\"]")), "u.toml").value();
    CHECK_FALSE(layered(base, dangling));
}
