#include "quiz/practice/session.hpp"

#include "practices.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>

namespace flapdoor::quiz {

namespace {

constexpr std::array six{Topic::scope, Topic::containment, Topic::flap_door, Topic::tack_pad, Topic::cleaning, Topic::records};

/// Answers today's session to its end. @param wrong  numbers of the questions answered wrong
std::vector<Topic> play(Practice& practice, std::span<const Topic> topics, int day, const std::vector<std::size_t>& wrong = {})
{
    std::vector<Topic> asked;
    while (const auto topic = next_topic(practice, topics, first_day + day)) {
        add(practice, *topic, day, std::find(wrong.begin(), wrong.end(), asked.size()) == wrong.end());
        asked.push_back(*topic);
        REQUIRE(asked.size() < 500);
    }
    return asked;
}

}

TEST_CASE("a session asks every due topic, those behind a critical rule first")
{
    Practice practice = toward(7);
    CHECK(play(practice, six, 0) == std::vector{Topic::containment, Topic::flap_door, Topic::scope, Topic::tack_pad, Topic::cleaning, Topic::records});
    CHECK_FALSE(next_topic(practice, six, first_day));
    CHECK(next_topic(practice, six, first_day + 1) == Topic::containment);
}

TEST_CASE("topics take turns, and no two questions of one topic follow each other")
{
    Practice practice = toward(7);
    practice.each = 3;
    CHECK(questions_left(practice, six, first_day) == 18);
    const auto asked = play(practice, six, 0);
    CHECK(asked.size() == 18);
    CHECK(std::adjacent_find(asked.begin(), asked.end()) == asked.end());
    for (const Topic topic : six) CHECK(std::count(asked.begin(), asked.end(), topic) == 3);
}

TEST_CASE("what was missed comes again after three others")
{
    Practice practice = toward(7);
    const auto asked = play(practice, six, 0, {0});
    CHECK(asked.size() == 7);
    CHECK(asked[0] == Topic::containment);
    CHECK(std::find(asked.begin() + 1, asked.end(), Topic::containment) - asked.begin() >= 4);
}

TEST_CASE("where nothing else is due, other topics fill in before a missed one comes again")
{
    Practice practice = toward(7);
    const auto asked = play(practice, six, 0, {5});
    REQUIRE(asked.size() == 10);
    CHECK(asked[5] == Topic::records);
    CHECK(std::count(asked.begin() + 6, asked.begin() + 9, Topic::records) == 0);
    CHECK(asked[9] == Topic::records);
}

TEST_CASE("a missed topic that is the only one comes again at once")
{
    Practice practice = toward(7);
    CHECK(play(practice, std::array{Topic::dust}, 0, {0, 1}) == std::vector{Topic::dust, Topic::dust, Topic::dust});
}

TEST_CASE("a session that was broken off goes on where it stopped")
{
    Practice whole = toward(7);
    whole.each = 2;
    const auto at_once = play(whole, six, 0, {2, 7});
    for (std::size_t stop = 0; stop < at_once.size(); ++stop) {
        Practice resumed = toward(7);
        resumed.each = 2;
        resumed.attempts.assign(whole.attempts.begin(), whole.attempts.begin() + static_cast<std::ptrdiff_t>(stop));
        CHECK(next_topic(resumed, six, first_day) == at_once[stop]);
    }
}

TEST_CASE("every session ends, however it is answered", "[property]")
{
    CHECK(rc::check([] {
        Practice practice = toward(*rc::gen::inRange(1, 15));
        practice.each = *rc::gen::inRange(1, 5);
        practice.is_refreshed = *rc::gen::arbitrary<bool>();
        const auto count = *rc::gen::inRange<std::size_t>(1, six.size() + 1);
        const std::span<const Topic> topics(six.data(), count);
        for (int day = 0; day < 16; day += *rc::gen::inRange(1, 4)) {
            const auto wrong = *rc::gen::container<std::vector<std::size_t>>(rc::gen::inRange<std::size_t>(0, 25));
            play(practice, topics, day, wrong);
            RC_ASSERT(questions_left(practice, topics, first_day + day) == 0u);
        }
    }));
}

}
