#include "quiz/practice/boxes.hpp"

#include "practices.hpp"
#include "quiz/practice/session.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <array>

namespace flapdoor::quiz {

namespace {

constexpr std::array one{Topic::containment};

Box box_of(const Practice& practice, int today) { return boxes_of(practice, one, first_day + today)[0]; }

std::vector<int> session_days(int days)
{
    std::vector<int> all;
    for (const SessionDay& session : sessions_ahead(toward(days), one, first_day)) all.push_back(session.day - first_day);
    return all;
}

}

// The gaps for a week are 14, 29 and 43 % of it, around the 20 to 40 % that Cepeda et al. 2008 (Psychological Science 19,
// 1095-1102, abstract) found best for a delay of a week. The days themselves follow from gaps 1, 2, 4 by hand.
TEST_CASE("with every answer right, sessions lie as the gaps say, the last on the eve")
{
    CHECK(session_days(7) == std::vector{0, 1, 3, 6});
    CHECK(session_days(3) == std::vector{0, 1, 2});
    CHECK(session_days(5) == std::vector{0, 1, 3, 4});
    CHECK(session_days(10) == std::vector{0, 1, 3, 7, 9});
    CHECK(session_days(2) == std::vector{0, 1});
    CHECK(session_days(1) == std::vector{0});
    CHECK(session_days(0).empty());
}

TEST_CASE("a wrong answer brings its topic back today and then tomorrow")
{
    Practice practice = toward(7);
    add(practice, one[0], 0, true);
    add(practice, one[0], 1, false);
    CHECK(box_of(practice, 1).due == first_day + 1);
    add(practice, one[0], 1, true);
    CHECK(box_of(practice, 1).due == first_day + 2);
    CHECK(box_of(practice, 1).box == 1);
}

TEST_CASE("asked early and right proves nothing, asked early and wrong counts")
{
    Practice practice = toward(10);
    add(practice, one[0], 0, true);
    add(practice, one[0], 1, true);
    CHECK(box_of(practice, 1).due == first_day + 3);
    add(practice, one[0], 2, true);
    CHECK(box_of(practice, 2).due == first_day + 3);
    CHECK(box_of(practice, 2).box == 2);
    add(practice, one[0], 2, false);
    CHECK(box_of(practice, 2).box == 0);
    CHECK(box_of(practice, 2).due == first_day + 2);
}

TEST_CASE("after the field day nothing is due unless refreshers are wanted: 30, 90, 180 days on")
{
    Practice practice = toward(3);
    for (const int day : {0, 1, 2}) add(practice, one[0], day, true);
    CHECK_FALSE(next_topic(practice, one, first_day + 40));
    practice.is_refreshed = true;
    CHECK_FALSE(next_topic(practice, one, first_day + 32));
    CHECK(next_topic(practice, one, first_day + 33) == one[0]);
    add(practice, one[0], 35, false);
    CHECK(next_topic(practice, one, first_day + 35) == one[0]);     // missed: once more
    add(practice, one[0], 35, true);
    CHECK_FALSE(next_topic(practice, one, first_day + 92));
    CHECK(next_topic(practice, one, first_day + 93) == one[0]);
    add(practice, one[0], 100, true);
    add(practice, one[0], 190, true);
    CHECK_FALSE(next_topic(practice, one, first_day + 1000));
}

TEST_CASE("whatever is answered, every topic is due again on the eve at the latest", "[property]")
{
    CHECK(rc::check([] {
        const int days = *rc::gen::inRange(2, 15);
        Practice practice = toward(days);
        int day = 0;
        const auto count = *rc::gen::inRange(0, 30);
        for (int i = 0; i < count; ++i) {
            day = std::min(day + *rc::gen::inRange(0, 3), days - 2);
            add(practice, one[0], day, *rc::gen::arbitrary<bool>());
        }
        const Box box = box_of(practice, day);
        RC_ASSERT(box.due <= first_day + (days - 1));
        RC_ASSERT(box.box >= 0);
        RC_ASSERT(box.box <= last_box);
    }));
}

}
