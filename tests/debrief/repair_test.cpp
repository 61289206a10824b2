#include "small_study.hpp"

#include "debrief/repair/lack.hpp"
#include "debrief/repair/mistake.hpp"
#include "debrief/repair/repair.hpp"
#include "drill/trunk.hpp"
#include "rules/evaluate.hpp"
#include "text/writing.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace flapdoor::debrief::mending {

namespace {

std::string card(const std::string& rest) { return "{ by = [\"ann\"], " + rest + " },\n"; }

const std::string signs = card(R"(do = "post-signs", at = "door")");
const std::string shut = card(R"(do = "close-window", opening = "window")");
const std::string air_off = card(R"(do = "switch-hvac-off")");
const std::string sheet = card(R"(do = "lay-floor-sheet", sheeting = "poly", reach = "6 ft")");
const std::string short_sheet = card(R"(do = "lay-floor-sheet", sheeting = "poly", reach = "2 ft")");
const std::string scrape = card(R"(do = "disturb-paint", component = "casing", technique = "hand-scrape", time = "2 min")");
const std::string dry_scrape = card(R"(do = "disturb-paint", component = "casing", technique = "hand-scrape", time = "2 min", is-misted = false)");
const std::string vacuum = card(R"(do = "vacuum-surfaces", target = "everything", vacuum = "vacuum")");
const std::string look = card(R"(do = "inspect", light = "flashlight")");
const std::string dim_look = card(R"(do = "inspect", light = "as-it-is")");
const std::string covers_down = card(R"(do = "take-down-covers")");
const std::string record = card(R"(do = "write-record")");
const std::string short_record = card(R"(do = "write-record", has-cloth-counts = false)");
const std::string late_report = card(R"(do = "hand-over-report", days-after = 40)");
const std::string report_soon = card(R"(do = "hand-over-report", days-after = 3)");
const std::string clean = card(R"(do = "clean-off", vacuum = "vacuum")");
const std::string leave = card(R"(do = "leave-work-area", opening = "door")");
const std::string nap = card(R"(do = "wait", time = "10 min")");

/// A book of one rule.
std::string book_of(const std::string& when, const std::string& each = {})
{
    return "format = 1\nid = \"one\"\ntitle = \"One\"\nedition = \"made up for a test, 2024\"\n[[rule]]\nid = \"it\"\nsays = \"it\"\nreason = \"Because.\"\nclass = \"practice\"\nweight = 1\n" + each
           + "when = " + when + "\n";
}

struct Repaired {
    std::vector<std::string> told;
    std::string no_way;
    bool was_broken = false;
    bool is_mended = false;
    job::WorkPlan changed;
    std::vector<std::string> put_back;      ///< the same mistake in the reference plan
    bool is_broken_there = false;
};

Repaired repaired(const std::string& book_toml, const std::string& cards, const std::optional<std::string>& reference_cards)
{
    const auto scenario = job::read_scenario(small_job::scenario_text("A small job"), "scenario.toml");
    REQUIRE(scenario);
    const auto read = [&](const std::string& text) {
        const auto plan = job::read_plan(small_job::plan_text("plan", text), "plan.toml", *scenario);
        if (!plan)
            for (const Problem& problem : plan.error()) FAIL(describe(problem));
        return *plan;
    };
    const auto book = rules::read_rule_book(book_toml, "book.toml");
    if (!book)
        for (const Problem& problem : book.error()) FAIL(describe(problem));
    drill::RunOptions options;
    options.detail = 0.05;
    const drill::Trunk trunk = drill::grow(*scenario, read(cards), options);
    const rules::Verdict verdict = rules::evaluate(*book, *scenario, trunk.run.site.log).front();
    std::optional<drill::Trunk> reference;
    std::optional<Pattern> pattern;
    if (reference_cards) {
        reference.emplace(drill::grow(*scenario, read(*reference_cards), options));
        REQUIRE(rules::evaluate(*book, *scenario, reference->run.site.log).front().ruling == rules::Ruling::kept);
        pattern.emplace(Pattern{reference->run.plan, reference->run.site.log});
    }
    const RepairShop shop{*scenario, trunk.run.plan, trunk.run.site.log, pattern,
                          [&](int at, const job::Card& c) { return drill::why_not(trunk.before.at(static_cast<std::size_t>(at)), c); }};
    Repair repair = repair_of(shop, book->rules.front(), verdict);
    Repaired outcome;
    outcome.was_broken = verdict.ruling == rules::Ruling::broken;
    outcome.no_way = repair.no_way;
    for (const PlanEdit& edit : repair.edits) outcome.told.push_back(told(edit, trunk.run.plan, *scenario));
    outcome.changed = edited(trunk.run.plan, repair.edits);
    outcome.is_mended = rules::evaluate(*book, *scenario, drill::branch(trunk, outcome.changed, options).site.log).front().ruling == rules::Ruling::kept;
    if (reference) {
        const std::vector<PlanEdit> mistake = mistake_in(reference->run.plan, trunk.run.plan, repair.edits);
        for (const PlanEdit& edit : mistake) outcome.put_back.push_back(told(edit, reference->run.plan, *scenario));
        outcome.is_broken_there = rules::evaluate(*book, *scenario, drill::branch(*reference, edited(reference->run.plan, mistake), options).site.log).front().ruling == rules::Ruling::broken;
    }
    return outcome;
}

struct Case {
    const char* kind;
    std::string book, cards;
    std::optional<std::string> reference;
    std::vector<std::string> told;
    std::vector<std::string> put_back;
};

}

TEST_CASE("each kind of rule says how a breach of it is repaired, and the repair mends it")
{
    const std::vector<Case> cases{
        {"before: a late card moves", book_of(R"({ before = ["post-signs", "first-dust"] })"), shut + scrape + signs + vacuum, signs + shut + scrape + vacuum,
         {"card 3 (Post warning signs) comes before card 2 (Work on the paint)"}, {"card 1 (Post warning signs) comes before card 4 (Vacuum surfaces)"}},
        {"before: a missing card is put in where the reference has it", book_of(R"({ before = ["post-signs", "first-dust"] })"), shut + scrape + vacuum, shut + signs + scrape + vacuum,
         {"Post warning signs (Door) is put in before card 2 (Work on the paint)"}, {"card 2 (Post warning signs) is left out"}},
        {"not_before: the one of the two sides with fewer cards moves", book_of(R"({ not_before = ["write-record", { step = ["vacuum-surfaces", "inspect"] }] })"), scrape + record + vacuum + look,
         scrape + vacuum + look + record, {"card 2 (Write the record) comes last"}, {"card 4 (Write the record) comes before card 2 (Vacuum surfaces)"}},
        {"not_before a state: the card that brings it about is put in", book_of(R"({ not_before = ["first-dust", { state = "window-closed", of = "this" }] })", "each = \"window\"\n"), signs + scrape, signs + shut + scrape,
         {"Close a window (Window) is put in before card 2 (Work on the paint)"}, {"card 2 (Close a window) is left out"}},
        {"while: a state that ends too late begins earlier", book_of(R"({ while = { state = "hvac-running", is = false, from = "first-dust", to = "last-dust" } })"), signs + scrape + air_off, signs + air_off + scrape,
         {"card 3 (Switch the air handling off) comes before card 2 (Work on the paint)"}, {"card 2 (Switch the air handling off) comes last"}},
        {"after_each: what must follow is put in", book_of(R"({ after_each = { event = "disturb-paint", do = "vacuum-surfaces", until = "inspect" } })"), scrape + look, scrape + vacuum + look,
         {"Vacuum surfaces is put in before card 2 (Inspect by eye)"}, {"card 2 (Vacuum surfaces) is left out"}},
        {"within: a count is set right", book_of(R"({ within = { do = "hand-over-report", counted = "days-after", most = 30 } })"), scrape + late_report, scrape + report_soon,
         {"card 2 (Give the report to the owner): “Days after” is now 3"}, {"card 2 (Give the report to the owner): “Days after” is now 40"}},
        {"at_least: the card that decides the measure is set right", book_of(R"({ at_least = { measured = "reach", at = "disturb-paint", least = "3 ft" } })"), short_sheet + scrape, sheet + scrape,
         {"card 1 (Lay floor sheeting): “How far it reaches” is now 6 ft"}, {"card 1 (Lay floor sheeting): “How far it reaches” is now 2 ft"}},
        {"at_least: what decides the measure is put in", book_of(R"({ at_least = { measured = "soles-cleaned", least = "true" } })"), scrape + leave, scrape + clean + leave,
         {"Clean off before leaving is put in before card 2 (Leave the work area)"}, {"card 2 (Clean off before leaving) is left out"}},
        {"at_least done: what was never done is put in", book_of(R"({ at_least = { done = "write-record" } })"), scrape + vacuum, scrape + vacuum + record,
         {"Write the record is put in at the end"}, {"card 3 (Write the record) is left out"}},
        {"at_least done with a setting: a card that is there is set right", book_of(R"({ at_least = { done = { step = "write-record", with = { has-cloth-counts = true } } } })"),
         scrape + short_record, scrape + record, {"card 2 (Write the record): “Has cloth counts” is now yes"}, {"card 2 (Write the record): “Has cloth counts” is now no"}},
        {"never with a setting: a switch is turned round", book_of(R"({ never = { step = "disturb-paint", with = { is-misted = false } } })"), dry_scrape, scrape,
         {"card 1 (Work on the paint): “Kept misted” is now yes"}, {"card 1 (Work on the paint): “Kept misted” is now no"}},
        {"never with a word: the reference's word is taken", book_of(R"({ never = { step = "inspect", with = { light = "as-it-is" } } })"), scrape + dim_look, scrape + look,
         {"card 2 (Inspect by eye): “Light” is now flashlight"}, {"card 2 (Inspect by eye): “Light” is now as it is"}},
        {"never at all: the card is left out", book_of(R"({ never = "wait" })"), scrape + nap + vacuum, scrape + vacuum, {"card 2 (Wait) is left out"}, {"Wait is put in before card 2 (Vacuum surfaces)"}},
        {"exactly_one_of: the second is left out", book_of(R"({ exactly_one_of = ["vacuum-surfaces", "wait"] })"), scrape + vacuum + nap, scrape + vacuum, {"card 3 (Wait) is left out"}, {"Wait is put in at the end"}},
    };
    for (const Case& c : cases) {
        INFO(c.kind);
        const Repaired outcome = repaired(c.book, c.cards, c.reference);
        CHECK(outcome.was_broken);
        INFO("no way: " << outcome.no_way);
        CHECK(outcome.told == c.told);
        CHECK(outcome.is_mended);
        CHECK(outcome.put_back == c.put_back);
        CHECK(outcome.is_broken_there);
    }
}

TEST_CASE("a switch and a word are set right without a reference plan too")
{
    CHECK(repaired(book_of(R"({ never = { step = "disturb-paint", with = { is-misted = false } } })"), dry_scrape, std::nullopt).is_mended);
    CHECK(repaired(book_of(R"({ never = { step = "inspect", with = { light = "as-it-is" } } })"), scrape + dim_look, std::nullopt).is_mended);
    CHECK(repaired(book_of(R"({ before = ["post-signs", "first-dust"] })"), scrape + signs, std::nullopt).is_mended);
}

TEST_CASE("what cannot be repaired mechanically says why")
{
    CHECK(repaired(book_of(R"({ before = ["post-signs", "first-dust"] })"), scrape, std::nullopt).no_way == "there is no reference plan to take the card from");
    CHECK(repaired(book_of(R"({ not_before = ["write-record", { state = "passed" }] })"), scrape + record, std::nullopt).no_way == "it hangs on how the check comes out, not on one card");
    CHECK(repaired(book_of(R"({ at_least = { measured = "reach", at = "disturb-paint", least = "3 ft" } })"), short_sheet + scrape, std::nullopt).no_way
          == "there is no reference plan to take the settings from");
}

TEST_CASE("somebody who is outside enters before the card that was refused")
{
    const auto scenario = job::read_scenario(small_job::scenario_text("A small job"), "scenario.toml");
    REQUIRE(scenario);
    const std::string enter = card(R"(do = "enter-work-area", opening = "door")");
    const auto plan = job::read_plan(small_job::plan_text("plan", scrape + leave + enter + leave + vacuum + look), "plan.toml", *scenario);
    REQUIRE(plan);
    const drill::Trunk trunk = drill::grow(*scenario, *plan);
    REQUIRE(trunk.run.site.log.entries[4].outcome == job::Outcome::refused);
    const Lack lack = lack_of(trunk.before[4], plan->cards[4], 4);
    CHECK(lack.left_outside.empty());
    CHECK(lack.not_inside == std::vector{job::PersonId{"ann"}});
    const std::vector<PlanEdit> edits = made_up(lack, *plan, edited_plan(*plan, {}));
    REQUIRE(edits.size() == 1);
    CHECK(told(edits.front(), *plan, *scenario) == "Enter the work area (Door) is put in before card 5 (Vacuum surfaces)");
    const drill::Run run = drill::branch(trunk, edited(*plan, edits));
    CHECK(run.site.log.entries[5].step == "vacuum-surfaces");
    CHECK(run.site.log.entries[5].outcome == job::Outcome::done);
}

TEST_CASE("what was left outside the flap door is brought in with the rest")
{
    const auto scenario = job::read_scenario(small_job::scenario_text("A small job"), "scenario.toml");
    REQUIRE(scenario);
    const auto plan = job::read_plan(small_job::plan_text("plan", card(R"(do = "stage-tools", supplies = ["scraper", "poly", "tape"])") + card(R"(do = "hang-flap", opening = "door", sheeting = "poly")") + scrape + vacuum), "plan.toml", *scenario);
    REQUIRE(plan);
    drill::Trunk trunk = drill::grow(*scenario, *plan);
    site::Site& site = trunk.before[3];
    std::erase(site.staged, job::SupplyId{"vacuum"});   // everything of the small job lies inside from the start
    REQUIRE(drill::why_not(site, plan->cards[3]));
    const Lack lack = lack_of(site, plan->cards[3], 3);
    CHECK(lack.left_outside == std::vector<std::string>{"vacuum"});
    CHECK(lack.not_inside.empty());
    const std::vector<PlanEdit> edits = made_up(lack, *plan, edited_plan(*plan, {}));
    REQUIRE(edits.size() == 1);
    CHECK(told(edits.front(), *plan, *scenario) == "card 1 (Bring tools and supplies inside): “What is brought in” now has HEPA vacuum too");
}

TEST_CASE("an edited plan knows where each of its cards came from")
{
    const auto scenario = job::read_scenario(small_job::scenario_text("A small job"), "scenario.toml");
    REQUIRE(scenario);
    const auto plan = job::read_plan(small_job::plan_text("plan", signs + shut + scrape + vacuum), "plan.toml", *scenario);
    REQUIRE(plan);
    PlanEdit move, drop, put;
    move.kind = PlanEdit::Kind::move;
    move.card = 0;
    move.before = 3;
    drop.kind = PlanEdit::Kind::leave_out;
    drop.card = 1;
    put.kind = PlanEdit::Kind::put_in;
    put.before = 4;
    put.put = plan->cards[3];
    const EditedPlan changed = edited_plan(*plan, {move, drop, put});
    CHECK(changed.place == std::vector<int>{2, 3, 3, 4});
    CHECK(changed.is_touched == std::vector<bool>{false, true, false, true});
}

TEST_CASE("edits are made at once, by the numbers of the plan before them")
{
    const auto scenario = job::read_scenario(small_job::scenario_text("A small job"), "scenario.toml");
    REQUIRE(scenario);
    const auto plan = job::read_plan(small_job::plan_text("plan", signs + shut + scrape + vacuum + look), "plan.toml", *scenario);
    REQUIRE(plan);
    CHECK(drill::shared_cards(*plan, edited(*plan, {})) == 5);
    PlanEdit move, drop, set, put;
    move.kind = PlanEdit::Kind::move;
    move.card = 0;
    move.before = 3;
    drop.kind = PlanEdit::Kind::leave_out;
    drop.card = 1;
    set.card = 2;
    set.values.emplace_back("share", text::leaf_node(0.5));
    put.kind = PlanEdit::Kind::put_in;
    put.before = 5;
    put.put.step = job::Wait{};
    put.put.by = {{"ann"}};
    const job::WorkPlan changed = edited(*plan, {move, drop, set, put});
    REQUIRE(changed.cards.size() == 5);
    CHECK(std::get<job::DisturbPaint>(changed.cards[0].step).share == 0.5);
    CHECK(std::holds_alternative<job::PostSigns>(changed.cards[1].step));
    CHECK(std::holds_alternative<job::VacuumSurfaces>(changed.cards[2].step));
    CHECK(std::holds_alternative<job::Inspect>(changed.cards[3].step));
    CHECK(std::holds_alternative<job::Wait>(changed.cards[4].step));
}

}
