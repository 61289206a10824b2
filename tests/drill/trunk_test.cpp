#include "short_plan.hpp"

#include "drill/trunk.hpp"

#include <functional>

namespace flapdoor::drill {

namespace {

struct Change {
    const char* what;
    std::function<void(job::WorkPlan&)> make;
};

job::Card waiting(const char* minutes)
{
    job::Card card;
    card.step = job::Wait{};
    std::get<job::Wait>(card.step).time = Time{std::string(minutes) == "ten" ? 600.0 : 125.0};
    card.by = {{"rosa"}};
    return card;
}

const std::vector<Change> changes{
    {"nothing", [](job::WorkPlan&) {}},
    {"a card put in first", [](job::WorkPlan& plan) { plan.cards.insert(plan.cards.begin(), waiting("ten")); }},
    {"a card put in while dust flies, off the minute", [](job::WorkPlan& plan) { plan.cards.insert(plan.cards.begin() + 4, waiting("two")); }},
    {"the tack pad left out", [](job::WorkPlan& plan) { plan.cards.erase(plan.cards.begin() + 1); }},
    {"misted work", [](job::WorkPlan& plan) { std::get<job::DisturbPaint>(plan.cards[2].step).is_misted = true; }},
    {"longer work", [](job::WorkPlan& plan) { std::get<job::DisturbPaint>(plan.cards[2].step).time = 4.0_min; }},
    {"the bag closed late", [](job::WorkPlan& plan) { std::swap(plan.cards[4], plan.cards[7]); }},
    {"one card less at the end", [](job::WorkPlan& plan) { plan.cards.pop_back(); }},
    {"one card more at the end", [](job::WorkPlan& plan) { plan.cards.push_back(waiting("ten")); }},
    {"other cards altogether", [](job::WorkPlan& plan) { plan.cards = {waiting("ten"), waiting("two")}; }},
    {"no card", [](job::WorkPlan& plan) { plan.cards.clear(); }},
};

bool is_same(const job::RunLog& a, const job::RunLog& b)
{
    if (a.entries.size() != b.entries.size() || a.states.size() != b.states.size()) return false;
    for (std::size_t i = 0; i < a.entries.size(); ++i) {
        const job::LogEntry& x = a.entries[i];
        const job::LogEntry& y = b.entries[i];
        if (x.card != y.card || x.step != y.step || x.label != y.label || x.by != y.by || x.with != y.with || x.outcome != y.outcome || x.reason != y.reason || x.start != y.start || x.end != y.end) return false;
        if (x.measured.size() != y.measured.size()) return false;
        for (std::size_t m = 0; m < x.measured.size(); ++m)
            if (x.measured[m].name != y.measured[m].name || x.measured[m].object != y.measured[m].object || x.measured[m].value != y.measured[m].value) return false;
    }
    for (std::size_t i = 0; i < a.states.size(); ++i)
        if (a.states[i].at != b.states[i].at || a.states[i].state != b.states[i].state || a.states[i].object != b.states[i].object || a.states[i].holds != b.states[i].holds) return false;
    return true;
}

}

TEST_CASE("a branch is, bit for bit, the changed plan carried out from the start", "[determinism]")
{
    const job::Scenario scenario = job::shipped_scenario();
    for (const double detail : {1.0, 0.25}) {
        RunOptions options;
        options.seed = 11;
        options.detail = detail;
        const Trunk trunk = grow(scenario, short_plan(scenario), options);
        for (const Change& change : changes) {
            INFO(change.what << ", detail " << detail);
            job::WorkPlan changed = trunk.run.plan;
            change.make(changed);
            const Run whole = carry_out(scenario, changed, options);
            for (const unsigned threads : {1U, 2U}) {
                RunOptions asked;
                asked.threads = threads;
                const Run grown = branch(trunk, changed, asked);
                CHECK(grown.hashes == whole.hashes);
                CHECK(site::fingerprint(grown.site) == site::fingerprint(whole.site));
                CHECK(is_same(grown.site.log, whole.site.log));
                CHECK(grown.site.known == nullptr);
            }
        }
    }
}

TEST_CASE("growing a trunk changes nothing of the run and keeps the site before each card", "[determinism]")
{
    const job::Scenario scenario = job::shipped_scenario();
    RunOptions options;
    options.seed = 7;
    const Trunk trunk = grow(scenario, short_plan(scenario), options);
    const Run plain = run_short(7);
    CHECK(trunk.run.hashes == plain.hashes);
    REQUIRE(trunk.before.size() == plain.plan.cards.size() + 1);
    for (std::size_t i = 0; i < plain.hashes.size(); ++i) CHECK(site::fingerprint(trunk.before[i + 1]) == plain.hashes[i].hash);
}

TEST_CASE("parcels that fly as they did are not carried again")
{
    const job::Scenario scenario = job::shipped_scenario();
    RunOptions options;
    options.seed = 11;
    const Trunk trunk = grow(scenario, short_plan(scenario), options);
    const auto made_after = [&](const Change& change) {
        job::WorkPlan changed = trunk.run.plan;
        change.make(changed);
        return branch(trunk, changed, {}).site.parcel_steps;
    };
    CHECK(made_after(changes[1]) == 0);                                                                      // ten minutes later, all the same
    CHECK(made_after(changes[3]) == 0);                                                                      // a tack pad moves no air
    CHECK(made_after(changes[4]) < trunk.run.site.parcel_steps / 5);                                         // less dust in the same parcels
    CHECK(made_after(changes[5]) > 0);
}

TEST_CASE("plans share the cards they begin with")
{
    const job::Scenario scenario = job::shipped_scenario();
    const job::WorkPlan plan = short_plan(scenario);
    CHECK(shared_cards(plan, plan) == 10);
    job::WorkPlan other = plan;
    other.cards[6].label = "in";
    CHECK(shared_cards(plan, other) == 6);
    other = plan;
    other.cards[3].by = {{"rosa"}};
    CHECK(shared_cards(plan, other) == 3);
    other.cards.resize(2);
    CHECK(shared_cards(plan, other) == 2);
}

TEST_CASE("tracing sources changes no result and closes to the last picogram after every card", "[determinism]")
{
    const job::Scenario scenario = job::shipped_scenario();
    RunOptions options;
    options.seed = 7;
    options.traces_sources = true;
    int cards = 0;
    options.after_card = [&](const site::Site& site) {
        ++cards;
        REQUIRE(site.ledger.sources().has_value());
        CHECK(site.ledger.closes());
    };
    const Run traced = carry_out(scenario, short_plan(scenario), options);
    CHECK(cards == 10);
    CHECK(traced.hashes == run_short(7).hashes);
    CHECK(traced.site.ledger.sources()->sources() == std::vector<int>{2});
}

}
