#include "drill/attempt.hpp"

#include "job/files.hpp"
#include "text/input_file.hpp"

#include <catch2/catch.hpp>

#include <atomic>
#include <chrono>
#include <memory>
#include <thread>
#include <utility>
#include <vector>

using namespace flapdoor;

namespace {

const std::string folder = FLAPDOOR_SOURCE_DIR "/tests/data/drills/one-window/";

job::Scenario scenario()
{
    const std::string path = folder + "scenario.toml";
    return job::read_scenario(text::read_file(path).value(), path).value();
}

job::WorkPlan plan_of(const char* name = "good.toml") { return job::read_plan(text::read_file(folder + name).value(), name, scenario()).value(); }

/// Until no card is in play any more. @return false after a minute
bool wait(drill::Attempt& attempt)
{
    for (int i = 0; attempt.is_busy() && i < 12000; ++i) {
        attempt.take_news();
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    return !attempt.is_busy();
}

void play(drill::Attempt& attempt, const job::Card& card)
{
    attempt.play({card});
    REQUIRE(wait(attempt));
}

}

TEST_CASE("cards decided one by one give the site that the whole plan gives, bit for bit")
{
    const job::WorkPlan whole = plan_of();
    drill::RunOptions options;
    options.seed = 7;
    const drill::Run run = drill::carry_out(scenario(), whole, options);
    drill::Attempt attempt(scenario(), 7);
    for (const job::Card& card : whole.cards) play(attempt, card);
    CHECK(attempt.hashes() == run.hashes);
    CHECK(attempt.run("x").plan.cards.size() == whole.cards.size());
    REQUIRE(attempt.film().frames.size() > whole.cards.size());
    for (std::size_t i = 1; i < attempt.film().frames.size(); ++i) CHECK(attempt.film().frames[i - 1].at <= attempt.film().frames[i].at);
}

TEST_CASE("what is taken back leaves no trace")
{
    const job::WorkPlan whole = plan_of();
    drill::RunOptions options;
    options.seed = 7;
    const drill::Run run = drill::carry_out(scenario(), whole, options);
    drill::Attempt attempt(scenario(), 7);
    attempt.play(whole.cards);
    REQUIRE(wait(attempt));
    const std::uint64_t before = attempt.editions();
    for (int back = 0; back < 3; ++back) {
        attempt.step_back();
        REQUIRE(wait(attempt));
    }
    CHECK(attempt.cards().size() == whole.cards.size() - 3);
    CHECK(attempt.editions() > before);
    CHECK(attempt.film().frames.back().at == attempt.site().now);
    for (std::size_t i = whole.cards.size() - 3; i < whole.cards.size(); ++i) play(attempt, whole.cards[i]);
    CHECK(attempt.hashes() == run.hashes);
}

TEST_CASE("stepping back far beyond the sites that are kept makes them again")
{
    drill::Attempt attempt(scenario(), 3);
    const job::WorkPlan whole = plan_of();
    std::vector<job::Card> many(whole.cards.begin(), whole.cards.end());
    const job::Card wait_card{job::Wait{60.0_s, false}, {job::PersonId{"ana"}}, {}};
    while (many.size() < 40) many.push_back(wait_card);
    attempt.play(many);
    REQUIRE(wait(attempt));
    const std::vector<drill::StepHash> all = attempt.hashes();
    while (attempt.cards().size() > 5) {
        attempt.step_back();
        REQUIRE(wait(attempt));
        const std::size_t left = attempt.cards().size();
        CHECK(std::vector(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(left)) == attempt.hashes());
    }
}

TEST_CASE("a card that is given up has not happened")
{
    drill::Attempt attempt(scenario(), 1);
    play(attempt, plan_of().cards.front());
    const std::uint64_t state = attempt.hashes().back().hash;
    const job::Card long_wait{job::Wait{72.0_h, false}, {job::PersonId{"ana"}}, {}};
    attempt.play({long_wait});
    attempt.take_news();
    attempt.give_up();
    CHECK_FALSE(attempt.is_busy());
    CHECK(attempt.cards().size() == 1);
    CHECK(attempt.hashes().back().hash == state);
    CHECK(attempt.film().frames.back().at == attempt.site().now);
    play(attempt, plan_of().cards[1]);
    CHECK(attempt.cards().size() == 2);
}

TEST_CASE("a card that cannot be done is refused and kept, and says why before")
{
    drill::Attempt attempt(scenario(), 1);
    const job::Card no_vacuum{job::CleanOff{}, {job::PersonId{"ana"}}, {}};
    REQUIRE(attempt.why_not(no_vacuum).has_value());
    play(attempt, no_vacuum);
    CHECK(attempt.site().log.entries.back().outcome == job::Outcome::refused);
    CHECK(attempt.cards().size() == 1);
}

TEST_CASE("an attempt that goes hands its thread over instead of waiting, and the thread ends by itself")
{
    std::vector<std::pair<std::thread, std::shared_ptr<const std::atomic<bool>>>> left;
    {
        drill::Attempt attempt(scenario(), 1, 30.0_s, [&](std::thread thread, std::shared_ptr<const std::atomic<bool>> is_over) { left.emplace_back(std::move(thread), std::move(is_over)); });
        attempt.play(plan_of().cards); // a whole day: not over when the attempt goes
        while (attempt.site().log.entries.size() < 2) {
            attempt.take_news();
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        REQUIRE(attempt.is_busy());
    }
    REQUIRE(left.size() == 1);
    for (auto& [thread, is_over] : left) {
        thread.join();
        CHECK(*is_over);
    }
}
