#include "quiz/practice/outlook.hpp"

#include "../small_bank.hpp"
#include "practices.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>

namespace flapdoor::quiz {

namespace {

constexpr std::array topics{Topic::containment, Topic::cleaning};

}

TEST_CASE("the plan toward the field day is told in words")
{
    Practice practice = toward(7);
    practice.each = 3;
    const std::string sheet = practice_sheet(practice, topics, first_day);
    CHECK(says(sheet, "7 days to the field day (2026-12-06)."));
    CHECK(says(sheet, "Today: 6 questions, 2 topics."));
    CHECK(says(sheet, "2026-11-30 (6 questions), 2026-12-02 (6 questions), 2026-12-05 (6 questions)."));
    CHECK(says(sheet, "not yet practised"));
    CHECK(says(sheet, "certifies nobody"));
}

TEST_CASE("the table tells standing, share and when a topic comes again")
{
    Practice practice = toward(7);
    for (int i = 0; i < 10; ++i) add(practice, Topic::containment, 0, true);
    add(practice, Topic::cleaning, 0, false);
    const auto table = standing_table(practice, topics, first_day);
    CHECK(table.rows[0] == std::vector<std::string>{"Containment", "on track", "10 of 10 (72 to 100 %)", "tomorrow"});
    CHECK(table.rows[1] == std::vector<std::string>{"Order of cleaning", "practised", "0 of 1 (0 to 79 %)", "today"});
    const auto later = standing_table(practice, topics, first_day + 8);
    CHECK(later.rows[0].back() == "-");
}

TEST_CASE("after the last session a topic is ready, and the day itself is told")
{
    Practice practice = toward(2);
    for (const int day : {0, 1}) for (const Topic topic : topics) add(practice, topic, day, true);
    CHECK(standing_table(practice, topics, first_day + 1).rows[0].back() == "ready");
    CHECK(says(practice_sheet(practice, topics, first_day + 1), "Nothing is due today"));
    CHECK(says(practice_sheet(practice, topics, first_day + 2), "The field day is today"));
    CHECK(says(practice_sheet(practice, topics, first_day + 3), "The field day is over"));
}

TEST_CASE("what needs practice most comes first: weak topics, then what is due")
{
    constexpr std::array four{Topic::scope, Topic::containment, Topic::cleaning, Topic::records};
    Practice practice = toward(7);
    for (int i = 0; i < 4; ++i) add(practice, Topic::records, 0, i == 0);    // 1 of the 2 that count
    for (int i = 0; i < 4; ++i) add(practice, Topic::cleaning, 0, i != 0);   // 2 of the 3 that count
    add(practice, Topic::scope, 0, true);
    const auto all = outlooks(practice, four, first_day);
    REQUIRE(all.size() == 4);
    CHECK(all[0].topic() == Topic::records);
    CHECK(all[0].is_weak());
    CHECK(all[1].topic() == Topic::cleaning);
    CHECK(all[1].is_weak());
    CHECK(all[2].topic() == Topic::containment);    // not asked yet, and due
    CHECK_FALSE(all[2].is_weak());
    CHECK(all[3].topic() == Topic::scope);          // comes again tomorrow
    CHECK(due_words(practice, all[3].box, first_day) == "tomorrow");
    CHECK(right_words(all[2].mastery) == "-");
}

}
