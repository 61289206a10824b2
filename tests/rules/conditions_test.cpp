#include "rules/evaluate.hpp"
#include "small_job.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

/// A book of one rule with the given lines beside `id`, evaluated over the small job.
Verdict verdict(const std::string& lines, const SmallJob& job)
{
    const std::string text = "format = 1\nid = \"b\"\ntitle = \"B\"\nedition = \"2026\"\n[[rule]]\nid = \"r\"\nsays = \"s\"\nreason = \"w\"\ncite = \"c\"\nclass = \"must\"\nweight = 3\n" + lines;
    const auto book = read_rule_book(text, "b.toml");
    if (!book)
        for (const Problem& problem : book.error()) UNSCOPED_INFO(describe(problem));
    REQUIRE(book);
    return evaluate(*book, small_scenario(), job.log()).front();
}

Ruling ruling(const std::string& lines, const SmallJob& job) { return verdict(lines, job).ruling; }

std::string what(const std::string& lines, const SmallJob& job)
{
    const Verdict found = verdict(lines, job);
    return found.faults.empty() ? std::string() : text::as_sentence(found.faults.front().what.english());
}

Act twice(std::string label, job::Step step, double minute)
{
    Act act{std::move(label), std::move(step)};
    act.starts_at = minute;
    return act;
}

}

TEST_CASE("before: each of the second kind needs one of the first kind that ended earlier")
{
    const std::string rule = R"(when = { before = ["mist-sheeting", "fold-sheeting"] })";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    CHECK(ruling(rule, good_job().move_after("mist", "fold")) == Ruling::broken);
    CHECK(what(rule, good_job().move_after("mist", "fold")) == "Card 30 (Mist the sheeting) was not done when card 29 (Fold the sheeting) began.");
    CHECK(what(rule, good_job().without("mist")) == "\"Mist the sheeting\" was not done before card 29 (Fold the sheeting).");
    CHECK(ruling(rule, good_job().without("fold")) == Ruling::not_applicable);
    // Misted once, folded twice: the first mist serves both.
    CHECK(ruling(rule, good_job().add_after("fold", {"fold-again", job::FoldSheeting{}})) == Ruling::kept);
}

TEST_CASE("before: a card that has begun but not ended is not done")
{
    SmallJob job;
    job.add(twice("mist", job::MistSheeting{{"mister"}}, 600.0)).add(twice("fold", job::FoldSheeting{}, 602.0));
    CHECK(ruling(R"(when = { before = ["mist-sheeting", "fold-sheeting"] })", job) == Ruling::broken);
    job.at("fold").starts_at = 605.0;
    CHECK(ruling(R"(when = { before = ["mist-sheeting", "fold-sheeting"] })", job) == Ruling::kept);
}

TEST_CASE("before: refused cards do not count, cards that were not needed serve")
{
    const std::string rule = R"(when = { before = ["mist-sheeting", "fold-sheeting"] })";
    SmallJob job = good_job();
    job.at("mist").outcome = job::Outcome::refused;
    CHECK(ruling(rule, job) == Ruling::broken);
    job.at("mist").outcome = job::Outcome::not_needed;
    CHECK(ruling(rule, job) == Ruling::kept);
    job.at("fold").outcome = job::Outcome::refused;
    CHECK(ruling(rule, job) == Ruling::not_applicable);
}

TEST_CASE("before: with `each`, every thing needs its own")
{
    const std::string rule = "each = \"bag\"\nwhen = { before = [{ step = \"vacuum-bag\", with = { bag = \"this\" } }, { step = \"carry-out\", with = { bag = \"this\" } }] }";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    const Verdict broken = verdict(rule, good_job().without("vac-bag-2"));
    CHECK(broken.ruling == Ruling::broken);
    REQUIRE(broken.faults.size() == 1);
    CHECK(broken.faults.front().object == "bag-2");
}

TEST_CASE("moments: first dust, last dust and the passed verification")
{
    CHECK(ruling(R"(when = { before = ["post-signs", "first-dust"] })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { before = ["post-signs", "first-dust"] })", good_job().move_after("signs", "scrape")) == Ruling::broken);
    CHECK(ruling(R"(when = { before = ["last-dust", "mist-sheeting"] })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { before = ["last-dust", "mist-sheeting"] })", good_job().move_after("pry", "mist")) == Ruling::broken);
    CHECK(ruling(R"(when = { before = ["passed", "admit-occupants"] })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { before = ["passed", "admit-occupants"] })", good_job().move_before("back", "wipe-floor")) == Ruling::broken);
    CHECK(ruling(R"(when = { before = ["post-signs", "first-dust"] })", good_job().without("scrape").without("pry")) == Ruling::not_applicable);
}

TEST_CASE("not_before: a state must hold, all cards must have ended, a moment must have come")
{
    const std::string state = R"(when = { not_before = ["wipe-sill", { state = "inspection-passed" }] })";
    CHECK(ruling(state, good_job()) == Ruling::kept);
    CHECK(ruling(state, good_job().move_before("wipe-sill", "inspect")) == Ruling::broken);
    CHECK(what(state, good_job().move_before("wipe-sill", "inspect")) == "When card 41 (Verification wipe of a sill) began, the inspection by eye was not passed.");
    SmallJob lapsed = good_job();
    lapsed.at("flap-down").states.push_back(ends("inspection-passed"));
    CHECK(ruling(state, lapsed) == Ruling::broken);

    const std::string cards = R"(when = { not_before = ["take-down-flap", "vacuum-bag"] })";
    CHECK(ruling(cards, good_job()) == Ruling::kept);
    CHECK(ruling(cards, good_job().move_before("flap-down", "vac-bag-2")) == Ruling::broken);
    CHECK(ruling(cards, good_job().without("vac-bag-1").without("vac-bag-2")) == Ruling::broken);
    CHECK(ruling(cards, good_job().without("flap-down")) == Ruling::not_applicable);

    const std::string moment = R"(when = { not_before = ["take-down-signs", "passed"] })";
    CHECK(ruling(moment, good_job()) == Ruling::kept);
    CHECK(ruling(moment, good_job().move_before("signs-down", "inspect")) == Ruling::broken);

    const std::string negative = R"(when = { not_before = ["cover-register", { state = "hvac-running", is = false }] })";
    CHECK(ruling(negative, good_job()) == Ruling::kept);
    CHECK(ruling(negative, good_job().move_after("hvac", "cover-return")) == Ruling::broken);
}

TEST_CASE("while: the state holds at every instant, border included")
{
    const std::string rule = R"(when = { while = { state = "signs-up", from = "first-dust", to = "passed" } })";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    CHECK(ruling(rule, good_job().move_after("signs", "scrape")) == Ruling::broken);
    CHECK(ruling(rule, good_job().move_before("signs-down", "wipe-floor")) == Ruling::broken);
    // Down and up again between two cards is a gap; at one instant it is none.
    SmallJob gap = good_job();
    gap.at("mist").states.push_back(ends("signs-up", "door"));
    gap.at("fold").states.push_back(begins("signs-up", "door"));
    CHECK(ruling(rule, gap) == Ruling::broken);
    SmallJob moved = good_job();
    moved.at("mist").states = {ends("signs-up", "door"), begins("signs-up", "door")};
    CHECK(ruling(rule, moved) == Ruling::kept);
    // Without an end the stretch lasts as long as the job.
    SmallJob never_passed = good_job();
    never_passed.at("wipe-floor").states.clear();
    CHECK(ruling(rule, never_passed) == Ruling::broken);
}

TEST_CASE("while: during cards, a state that must not hold, an object of its own")
{
    CHECK(ruling(R"(when = { while = { state = "hvac-running", is = false, during = "disturb-paint" } })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { while = { state = "hvac-running", is = false, during = "disturb-paint" } })", good_job().without("hvac")) == Ruling::broken);
    const std::string window = "each = \"window\"\nwhen = { while = { state = \"window-closed\", of = \"this\", during = { phase = \"work\" } } }";
    CHECK(ruling(window, good_job()) == Ruling::kept);
    SmallJob opened = good_job();
    opened.at("scrape").states.push_back(ends("window-closed", "window"));
    const Verdict broken = verdict(window, opened);
    CHECK(broken.ruling == Ruling::broken);
    CHECK(broken.faults.front().what.english() == "At 09:55, card 19 (Leave the work area), the window was not closed (West window).");
    CHECK(ruling(R"(when = { while = { state = "signs-up", during = "sweep-floor" } })", good_job()) == Ruling::not_applicable);
}

TEST_CASE("after_each: the remedy comes before what would spread the fault")
{
    const std::string until = R"(when = { after_each = { event = "close-bag", do = "vacuum-bag", until = "carry-out" } })";
    CHECK(ruling(until, good_job()) == Ruling::kept);
    CHECK(ruling(until, good_job().move_after("vac-bag-1", "out-1")) == Ruling::broken);
    CHECK(ruling(until, good_job().without("close-bag-1").without("close-bag-2")) == Ruling::not_applicable);
    CHECK(ruling(until, good_job().without("vac-bag-2").without("out-2")) == Ruling::kept);
    const std::string open = R"(when = { after_each = { event = "carry-out", do = "store-waste" } })";
    CHECK(ruling(open, good_job()) == Ruling::kept);
    CHECK(ruling(open, good_job().move_before("store", "out-2")) == Ruling::broken);
}

TEST_CASE("after_each: an event can be a state that fails")
{
    const std::string rule = R"(when = { after_each = { event = { state = "window-closed", is = false }, do = "close-window", until = "disturb-paint" } })";
    CHECK(ruling(rule, good_job()) == Ruling::not_applicable);
    SmallJob opened = good_job();
    opened.add_after("scrape", {"open", job::OpenWindow{{"window"}}, {"ben"}, {ends("window-closed", "window")}, {}});
    CHECK(ruling(rule, opened) == Ruling::broken);
    opened.add_after("open", {"close", job::CloseWindow{{"window"}}, {"ben"}, {begins("window-closed", "window")}, {}});
    CHECK(ruling(rule, opened) == Ruling::kept);
}

TEST_CASE("within: no later than, by the clock or by the card's own count")
{
    const std::string clock = R"(when = { within = { do = "vacuum-bag", after = "close-bag", time = "10 min" } })";
    CHECK(ruling(clock, good_job()) == Ruling::kept);
    SmallJob late = good_job().without("vac-bag-2");
    late.move_after("vac-bag-1", "fold");
    CHECK(ruling(clock, late) == Ruling::broken);
    CHECK(ruling(clock, good_job().without("vac-bag-1").without("vac-bag-2")) == Ruling::broken);
    CHECK(ruling(clock, good_job().without("close-bag-1").without("close-bag-2")) == Ruling::not_applicable);
    const std::string counted = R"(when = { within = { do = "hand-over-report", counted = "days-after", most = 30 } })";
    SmallJob job = good_job();
    job.step<job::HandOverReport>("report").days_after = 30;
    CHECK(ruling(counted, job) == Ruling::kept);
    job.step<job::HandOverReport>("report").days_after = 31;
    CHECK(ruling(counted, job) == Ruling::broken);
    CHECK(what(counted, job) == "Card 50 (Give the report to the owner): days-after is 31; at most 30.");
}

TEST_CASE("only_by: everybody who takes part has the role")
{
    const std::string certified = R"(when = { only_by = { cards = "inspect", role = "certified-renovator" } })";
    SmallJob job = good_job();
    CHECK(ruling(certified, job) == Ruling::kept);
    job.at("inspect").by = {"ana", "ben"};
    CHECK(ruling(certified, job) == Ruling::broken);
    job.at("inspect").by = {"ben"};
    CHECK(what(certified, job) == "Card 41 (Inspect by eye) was carried out by Ben; it asks for certified renovator.");
    CHECK(ruling(certified, good_job().without("inspect")) == Ruling::not_applicable);
    const std::string trained = R"(when = { only_by = { cards = { hands = "trained" }, role = "trained-worker" } })";
    CHECK(ruling(trained, good_job()) == Ruling::kept);
    job = good_job();
    job.at("walls").by = {"stranger"};
    CHECK(ruling(trained, job) == Ruling::broken);
}

TEST_CASE("only_by: an untrained helper counts as trained once the certified renovator has taught them")
{
    const std::string text = "format = 1\nid = \"b\"\ntitle = \"B\"\nedition = \"2026\"\n[[rule]]\nid = \"r\"\nsays = \"s\"\nreason = \"w\"\ncite = \"c\"\nclass = \"must\"\nweight = 3\n"
                             "when = { only_by = { cards = \"vacuum-walls\", role = \"trained-worker\" } }";
    const RuleBook book = read_rule_book(text, "b.toml").value();
    job::Scenario scenario = small_scenario();
    scenario.crew.push_back({{"cy"}, "Cy", job::Role::untrained});
    SmallJob job = good_job();
    job.at("walls").by = {"cy"};
    CHECK(evaluate(book, scenario, job.log()).front().ruling == Ruling::broken);
    job.add_before("signs", {"train-cy", job::TrainWorker{{"cy"}}, {"ben"}, {}, {}});
    CHECK(evaluate(book, scenario, job.log()).front().ruling == Ruling::broken);
    job.at("train-cy").by = {"ana"};
    CHECK(evaluate(book, scenario, job.log()).front().ruling == Ruling::kept);
    job.move_after("train-cy", "walls");
    CHECK(evaluate(book, scenario, job.log()).front().ruling == Ruling::broken);
}

TEST_CASE("at_least: measures against limits from below and above")
{
    const auto with_reach = [](Length reach) {
        SmallJob job = good_job();
        job.at("sheet").measured = {length("reach", "casing", reach)};
        return job;
    };
    const std::string least = R"(when = { at_least = { measured = "reach", at = "lay-floor-sheet", least = "6 ft" } })";
    CHECK(ruling(least, with_reach(6.0_ft)) == Ruling::kept);
    CHECK(ruling(least, with_reach(5.9_ft)) == Ruling::broken);
    CHECK(what(least, with_reach(5.5_ft)) == "Card 12 (Lay floor sheeting): the reach of the floor sheeting (Window casing) is 5 ft 6 in; it must be at least 6 ft.");
    CHECK(ruling(least, good_job().without("sheet")) == Ruling::not_applicable);
    CHECK(ruling(R"(when = { at_least = { measured = "reach", below = "6 ft" } })", with_reach(6.0_ft)) == Ruling::broken);
    CHECK(ruling(R"(when = { at_least = { measured = "reach", most = "6 ft" } })", with_reach(6.0_ft)) == Ruling::kept);
}

TEST_CASE("at_least: the last measurement of each object can be the one that counts")
{
    SmallJob job = good_job();
    job.at("sheet").measured = {length("reach", "casing", 5.0_ft)};
    job.add_after("sheet", {"again", job::LayFloorSheet{{"poly"}}, {"ben"}, {}, {length("reach", "casing", 6.5_ft)}});
    CHECK(ruling(R"(when = { at_least = { measured = "reach", which = "last", least = "6 ft" } })", job) == Ruling::kept);
    CHECK(ruling(R"(when = { at_least = { measured = "reach", least = "6 ft" } })", job) == Ruling::broken);
    CHECK(ruling(R"(when = { at_least = { measured = "reach", which = "first", least = "6 ft" } })", job) == Ruling::broken);
}

TEST_CASE("at_least: cards can be counted, in all or before others")
{
    CHECK(ruling(R"(when = { at_least = { done = "close-bag", times = 2 } })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { at_least = { done = "close-bag", times = 3 } })", good_job()) == Ruling::broken);
    CHECK(ruling(R"(when = { at_least = { done = "close-bag", times = 2, by = "inspect" } })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { at_least = { done = "close-bag", times = 2, by = "fold-sheeting" } })", good_job()) == Ruling::broken);
    CHECK(ruling(R"(when = { at_least = { done = "close-bag", times = 2, by = "dry-wipe" } })", good_job()) == Ruling::not_applicable);
}

TEST_CASE("repeat_until: a failed check is followed by the remedy and another check")
{
    const std::string rule = R"(when = { repeat_until = { check = "inspect", measured = "dust-seen", good = "false", do = "re-clean", bars = "wipe-sill" } })";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    SmallJob job = good_job();
    job.at("inspect").measured = {truth("dust-seen", "", true)};
    CHECK(ruling(rule, job) == Ruling::broken);
    job.add_after("inspect", {"look", job::Inspect{}, {"ana"}, {begins("inspection-passed")}, {truth("dust-seen", "", false)}});
    CHECK(ruling(rule, job) == Ruling::broken);     // looked again without cleaning
    job.add_after("inspect", {"clean", job::ReClean{{"vac"}, {"wipes"}}});
    CHECK(ruling(rule, job) == Ruling::kept);
    CHECK(ruling(rule, SmallJob(job).move_after("wipe-sill", "clean")) == Ruling::broken);
    job.at("look").measured = {truth("dust-seen", "", true)};
    CHECK(ruling(rule, job) == Ruling::broken);     // given up
}

TEST_CASE("never: forbidden cards, forbidden ways of doing one, forbidden measures")
{
    const std::string outward = R"(when = { never = { step = "fold-sheeting", with = { dirty-side = "outward" } } })";
    SmallJob job = good_job();
    CHECK(ruling(outward, job) == Ruling::kept);
    CHECK(ruling(outward, good_job().without("fold")) == Ruling::not_applicable);
    job.step<job::FoldSheeting>("fold").dirty_side = job::DirtySide::outward;
    CHECK(ruling(outward, job) == Ruling::broken);
    CHECK(what(outward, job) == "Card 30 (Fold the sheeting): “dirty side: outward” must never be.");
    CHECK(ruling(R"(when = { never = "sweep-floor" })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { never = "sweep-floor" })", good_job().add_after("tools", {"sweep", job::SweepFloor{{"broom"}}})) == Ruling::broken);
    const std::string release = R"(when = { never = { measured = "visible-release", is = true } })";
    CHECK(ruling(release, good_job()) == Ruling::kept);
    job.at("scrape").measured = {truth("visible-release", "casing", true)};
    CHECK(ruling(release, job) == Ruling::broken);
}

TEST_CASE("parameters are compared as numbers with units, as kinds of supply, and by whether they are given")
{
    const auto hot = [](double fahrenheit_degrees) {
        SmallJob job = good_job();
        auto& step = job.step<job::DisturbPaint>("scrape");
        step.technique = job::Technique::heat_gun;
        step.heat = fahrenheit(fahrenheit_degrees);
        return job;
    };
    const std::string rule = R"(when = { never = { step = "disturb-paint", with = { heat = ">= 1100 F" } } })";
    CHECK(ruling(rule, hot(1100.0)) == Ruling::broken);
    CHECK(ruling(rule, hot(1099.0)) == Ruling::kept);
    CHECK(ruling(R"(when = { never = { step = "vacuum-walls", with = { vacuum = "hepa-vacuum" } } })", good_job()) == Ruling::broken);
    CHECK(ruling(R"(when = { never = { step = "vacuum-walls", with = { vacuum = ["shop-vacuum", "none"] } } })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { never = { step = "clean-off", with = { vacuum = "none" } } })", good_job().add_before("leave", {"off", job::CleanOff{}})) == Ruling::broken);
    CHECK(ruling(R"(when = { never = { step = "hang-flap", with = { sheets = "< 2" } } })", good_job()) == Ruling::kept);
    CHECK(ruling(R"(when = { never = { step = "stage-tools", with = { supplies = "hepa-vacuum" } } })", good_job()) == Ruling::broken);
}

TEST_CASE("a rule is in force only where its facts and cards are")
{
    const std::string fact = "applies = { facts = [\"has-carpet\"] }\nwhen = { never = \"mop-floor\" }";
    CHECK(ruling(fact, good_job()) == Ruling::not_applicable);
    const std::string unless = "applies = { unless = [\"has-carpet\"] }\nwhen = { never = \"mop-floor\" }";
    CHECK(ruling(unless, good_job()) == Ruling::broken);
    const std::string done = "applies = { done = [\"sweep-floor\"] }\nwhen = { never = \"mop-floor\" }";
    CHECK(ruling(done, good_job()) == Ruling::not_applicable);
    const std::string not_done = "applies = { not-done = [\"sweep-floor\"] }\nwhen = { never = \"mop-floor\" }";
    CHECK(ruling(not_done, good_job()) == Ruling::broken);
}

TEST_CASE("an empty log breaks nothing that needs a subject")
{
    CHECK(ruling(R"(when = { before = ["post-signs", "first-dust"] })", SmallJob{}) == Ruling::not_applicable);
    CHECK(ruling(R"(when = { while = { state = "signs-up", from = "start", to = "end" } })", SmallJob{}) == Ruling::not_applicable);
    CHECK(ruling(R"(when = { at_least = { done = "inspect" } })", SmallJob{}) == Ruling::broken);
}

TEST_CASE("exactly one of: one kind occurs, however often, and no other")
{
    const std::string rule = R"(when = { exactly_one_of = ["vacuum-walls", "wipe-walls"] })";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    CHECK(ruling(rule, good_job().add_after("walls", {"walls-again", job::VacuumWalls{{"vac"}}})) == Ruling::kept);
    const SmallJob both = good_job().add_after("walls", {"wiped", job::WipeWalls{{"wipes"}}});
    CHECK(ruling(rule, both) == Ruling::broken);
    CHECK(what(rule, both) == "Card 29 (Wipe the walls) came besides card 28 (Vacuum the walls); only one of them may.");
    CHECK(ruling(rule, good_job().without("walls")) == Ruling::broken);
    CHECK(what(rule, good_job().without("walls")) == "None of these was done: \"Vacuum the walls\", \"Wipe the walls\".");
    const std::string each = "each = \"sill\"\nwhen = { exactly_one_of = [{ step = \"wipe-sill\", with = { sill = \"this\" } }, { step = \"wipe-counter\" }] }";
    CHECK(verdict(each, good_job()).faults.front().object == "sill");
}

TEST_CASE("each opening of the work area is asked, whatever its kind")
{
    const std::string rule = "each = \"opening\"\nwhen = { before = [{ step = [\"close-window\", \"cover-register\", \"cover-door\", \"hang-flap\"], with = { opening = \"this\" } }, \"first-dust\"] }";
    CHECK(ruling(rule, good_job()) == Ruling::kept);
    for (const auto& [label, opening] : {std::pair{"window", "window"}, std::pair{"cover-return", "return"}, std::pair{"cover-closet", "closet-door"}, std::pair{"flap", "door"}}) {
        const Verdict broken = verdict(rule, good_job().without(label));
        REQUIRE(broken.faults.size() == 1);
        CHECK(broken.faults.front().object == opening);
    }
    const std::string doors = "each = \"door\"\nwhen = { before = [{ step = [\"cover-door\", \"hang-flap\"], with = { opening = \"this\" } }, \"first-dust\"] }";
    CHECK(ruling(doors, good_job().without("window")) == Ruling::kept);
    CHECK(ruling(doors, good_job().without("cover-closet")) == Ruling::broken);
}
