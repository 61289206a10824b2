#include "short_plan.hpp"

#include "text/field_types.hpp"

namespace flapdoor::drill {

TEST_CASE("the same seed gives the same site after every card", "[determinism]")
{
    const Run one = run_short(7);
    const Run two = run_short(7);
    REQUIRE(one.hashes.size() == 10);
    CHECK(one.hashes == two.hashes);
    for (std::size_t i = 0; i < one.hashes.size(); ++i) CHECK(one.hashes[i].card == static_cast<int>(i));
    for (std::size_t i = 1; i < one.hashes.size(); ++i) CHECK(one.hashes[i].hash != one.hashes[i - 1].hash);
}

TEST_CASE("the number of threads does not change a run", "[determinism]")
{
    const Run one = run_short(3, 1);
    REQUIRE(one.site.parcel_steps > 100'000);
    for (const unsigned threads : {2U, 3U, 8U}) CHECK(run_short(3, threads).hashes == one.hashes);
}

TEST_CASE("another seed gives another run from the first card in which chance has a part", "[determinism]")
{
    const Run one = run_short(1);
    const Run other = run_short(2);
    CHECK(one.hashes[2].hash != other.hashes[2].hash);
    CHECK(one.site.ledger.on(dust::Side::outside).dust != other.site.ledger.on(dust::Side::outside).dust);
    CHECK(one.site.ledger.released() != other.site.ledger.released());     // what the work lets go is not known well either
}

TEST_CASE("watching a run does not change it", "[determinism]")
{
    const job::Scenario scenario = job::shipped_scenario();
    RunOptions options;
    int ticks = 0;
    int cards = 0;
    options.watcher = [&](const site::Site&) { ++ticks; };
    options.after_card = [&](const site::Site& site) { CHECK(static_cast<int>(site.log.entries.size()) == ++cards); };
    const Run watched = carry_out(scenario, short_plan(scenario), options);
    CHECK(watched.hashes == run_short(1).hashes);
    CHECK(cards == 10);
    CHECK(ticks > 100);
}

TEST_CASE("card by card is the same as all at once", "[determinism]")
{
    const job::Scenario scenario = job::shipped_scenario();
    const job::WorkPlan plan = short_plan(scenario);
    RunOptions options;
    options.seed = 5;
    site::Site site = begin(scenario, options);
    std::vector<StepHash> hashes;
    for (std::size_t i = 0; i < plan.cards.size(); ++i) hashes.push_back(carry_out_card(site, plan.cards[i], static_cast<int>(i)));
    CHECK(hashes == run_short(5).hashes);
}

TEST_CASE("a card that cannot be carried out is logged with its reason and costs no time")
{
    const job::Scenario scenario = job::shipped_scenario();
    const job::WorkPlan plan = job::sound(job::read_plan(R"(format = 1
scenario = "back-bedroom"
title = "Refused"
card = [
  { do = "fold-sheeting", by = ["lee"] },
  { label = "idle", do = "wait", by = ["rosa"], time = "5 min", only-if-due = true },
  { do = "lay-floor-sheet", by = ["lee"], sheeting = "poly", reach = "8 ft" },
]
)", "refused.toml", scenario));
    const Run run = carry_out(scenario, plan, {});
    const std::vector<job::LogEntry>& log = run.site.log.entries;
    REQUIRE(log.size() == 3);
    CHECK(log[0].outcome == job::Outcome::refused);
    CHECK(log[0].reason == "no sheeting lies on the floor");
    CHECK(log[0].start == log[0].end);
    CHECK(log[1].outcome == job::Outcome::not_needed);
    CHECK(log[1].label == "idle");
    CHECK(log[2].outcome == job::Outcome::done);
    CHECK(log[2].reason.empty());
    CHECK(log[2].end > log[2].start);
    CHECK(job::parameter(log[2], "reach") == "8 ft");
    CHECK(job::parameter(log[2], "layers") == "1");
    REQUIRE(job::find_measure(log[2], "reach", "casing-1") != nullptr);
    CHECK(job::find_measure(log[2], "reach", "casing-1")->value >= (8.0_ft).si);
    CHECK(job::find_measure(log[0], "reach") == nullptr);
}

TEST_CASE("a card that names nobody is refused")
{
    const job::Scenario scenario = job::shipped_scenario();
    const site::Site site = begin(scenario, {});
    CHECK(why_not(site, job::Card{job::Wait{}, {}, ""}) == "nobody is named to do it");
    CHECK(why_not(site, job::Card{job::Wait{}, {{"lee"}}, ""}) == std::nullopt);
}

}
