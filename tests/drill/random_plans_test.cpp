#include "../job/random_card.hpp"
#include "../job/shipped.hpp"

#include "core/insist.hpp"
#include "drill/run.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace flapdoor::drill {

namespace {

/// Keeps the time that a card takes short, so that many plans can be tried.
void hurry(job::Card& card)
{
    if (auto* work = std::get_if<job::DisturbPaint>(&card.step)) work->time = std::min(work->time, 2.0_min);
    if (auto* wait = std::get_if<job::Wait>(&card.step)) wait->time = std::min(wait->time, 5.0_min);
    if (auto* fit = std::get_if<job::VacuumSurfaces>(&card.step)) fit->minutes_per_square_meter = std::min(fit->minutes_per_square_meter, 1.0);
    if (auto* carpet = std::get_if<job::VacuumCarpet>(&card.step)) carpet->minutes_per_square_meter = std::min(carpet->minutes_per_square_meter, 1.0);
}

/// Nothing but random cards.
job::WorkPlan wild_plan(job::Dice& dice, const job::Scenario& scenario)
{
    job::WorkPlan plan;
    plan.scenario = scenario.id;
    plan.title = "Wild";
    for (int n = 0; n < 40; ++n) plan.cards.push_back(job::random_card(dice, scenario));
    return plan;
}

/// The careful plan with cards left out, exchanged and strewn in: gets deep into a job before it goes wrong.
job::WorkPlan bent_plan(job::Dice& dice, const job::Scenario& scenario)
{
    job::WorkPlan plan = job::shipped_plan("good", scenario);
    std::erase_if(plan.cards, [&](const job::Card&) { return dice.unit() < 0.2; });
    for (int n = 0; n < 10; ++n) std::swap(plan.cards[dice.below(plan.cards.size())], plan.cards[dice.below(plan.cards.size())]);
    for (int n = 0; n < 15; ++n)
        plan.cards.insert(plan.cards.begin() + static_cast<std::ptrdiff_t>(dice.below(plan.cards.size())), job::random_card(dice, scenario));
    return plan;
}

/// What every run must keep, whatever its plan.
void check_run(const job::Scenario& scenario, job::WorkPlan plan, std::uint64_t seed, std::set<std::string>& done)
{
    for (job::Card& card : plan.cards) hurry(card);
    RunOptions options;
    options.seed = seed;
    site::Site site = begin(scenario, options);
    Time last = site.now;
    for (std::size_t i = 0; i < plan.cards.size(); ++i) {
        std::string broken;
        try {
            carry_out_card(site, plan.cards[i], static_cast<int>(i));   // audits the books, patch by patch
        }
        catch (const BrokenPromise& promise) {
            broken = promise.what();
        }
        plan.cards.resize(broken.empty() ? plan.cards.size() : i + 1);
        INFO("seed " << seed << ", card " << i + 1 << ": " << broken << "\n" << (broken.empty() ? "" : text::write_toml(plan)));
        REQUIRE(broken.empty());
        const job::LogEntry& entry = site.log.entries.back();
        REQUIRE(entry.start == last);
        REQUIRE(entry.end >= entry.start);
        REQUIRE((entry.outcome == job::Outcome::done) == entry.reason.empty());
        if (entry.outcome == job::Outcome::refused) REQUIRE(entry.end == entry.start);
        if (entry.outcome == job::Outcome::done) done.insert(entry.step);
        last = entry.end;
    }
    const dust::Ledger& ledger = site.ledger;
    CHECK(ledger.closes());
    CHECK(ledger.released() == ledger.on(dust::Side::inside) + ledger.on(dust::Side::outside) + ledger.on(dust::Side::contained));
    CHECK(std::is_sorted(site.log.states.begin(), site.log.states.end(), [](const job::StateChange& a, const job::StateChange& b) { return a.at < b.at; }));
}

}

namespace {

/// The shipped place with more in it: a counter, a thing and a register in other rooms.
job::Scenario crowded()
{
    return job::shipped_scenario(R"(
[[counter]]
id = "shelf"
title = "Shelf"
zone = "bedroom"
west = "9 ft"
south = "2 ft"
width = "1 ft"
depth = "3 ft"

[[object]]
id = "bench"
title = "Bench"
zone = "hall"
west = "12 ft"
south = "12 ft"
width = "1 ft 6 in"
depth = "3 ft"
height = "1 ft 6 in"
is-soft = true

[[opening]]
id = "house-return"
title = "Return of the house"
kind = "return"
zone = "house"
wall = "north"
from = "2 ft"
width = "1 ft"
height = "8 in"
is-open = true

[[person]]
id = "kim"
title = "Kim, helper"
role = "untrained"
)");
}

job::Scenario carpeted()
{
    job::Scenario scenario = crowded();
    scenario.zones[0].floor = job::FloorKind::carpet;
    scenario.drying = 2.0_h;
    return scenario;
}

}

TEST_CASE("the ledger closes after every card of any plan, however senseless", "[property]")
{
    const std::array scenarios{job::shipped_scenario(), crowded(), carpeted()};
    std::set<std::string> done;
    for (std::uint64_t seed = 1; seed <= 36; ++seed) {
        job::Dice dice(seed);
        const job::Scenario& scenario = scenarios[seed % 3];
        check_run(scenario, wild_plan(dice, scenario), seed, done);
    }
    for (std::uint64_t seed = 101; seed <= 115; ++seed) {
        job::Dice dice(seed);
        const job::Scenario& scenario = scenarios[seed % 3];
        check_run(scenario, bent_plan(dice, scenario), seed, done);
    }
    CHECK(done.size() >= 55);   // of 62 kinds: the plans get somewhere
}

}
