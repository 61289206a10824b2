#include "small_bank.hpp"

#include "rules/fraction.hpp"

#include <rapidcheck.h>

#include <algorithm>

namespace flapdoor::quiz {

namespace {

Mark marked(const char* id, const Response& response) { return mark(question_of(shipped_bank("sample"), id), response); }

bool is_nothing(const Mark& mark) { return !mark.is_right && mark.share == rules::Fraction{0, 1}; }

}

TEST_CASE("a right choice is worth all, a wrong one names its misconception and what to say")
{
    CHECK(marked("floor-reach", Chosen{{"six"}}).is_right);
    const Mark wrong = marked("floor-reach", Chosen{{"two"}});
    CHECK(is_nothing(wrong));
    REQUIRE(wrong.misconceptions == std::vector<std::string>{"cleaning-margin"});
    CHECK(wrong.told.front().en == "Two feet is how far beyond the work area the cleaning goes.");
}

TEST_CASE("no answer, two where one is asked, an unknown one and an answer of another form are worth nothing")
{
    CHECK(is_nothing(marked("floor-reach", LeftOut{})));
    CHECK(is_nothing(marked("floor-reach", Chosen{})));
    CHECK(is_nothing(marked("floor-reach", Chosen{{"six", "two"}})));
    CHECK(is_nothing(marked("floor-reach", Chosen{{"seven"}})));
    CHECK(is_nothing(marked("floor-reach", Typed{"6 ft"})));
    CHECK(is_nothing(marked("set-up", Chosen{{"signs"}})));
    CHECK(is_nothing(marked("largest-single-surface", LeftOut{})));
    CHECK(is_nothing(marked("way-of-the-air", Typed{"return"})));
}

TEST_CASE("several: hits less false alarms, never below nothing")
{
    CHECK(marked("barred-always", Chosen{{"heat-gun", "torch"}}).is_right);
    const Mark half = marked("barred-always", Chosen{{"torch"}});
    CHECK(half.share == rules::Fraction{1, 2});
    CHECK_FALSE(half.is_right);
    CHECK(half.told.size() == 1);
    CHECK(marked("barred-always", Chosen{{"torch", "heat-gun", "misted-scraping"}}).share == rules::Fraction{1, 2});
    CHECK(is_nothing(marked("barred-always", Chosen{{"torch", "misted-scraping", "shrouded-sander"}})));
    CHECK(is_nothing(marked("barred-always", Chosen{})));
}

TEST_CASE("order: any order that keeps the rules is right, whatever they leave free")
{
    std::vector<std::string> cards{"signs", "close", "cover", "sheet", "scrape"};
    std::sort(cards.begin(), cards.end());
    const Question question = question_of(shipped_bank("sample"), "set-up");
    int right = 0;
    do {
        const auto at = [&](const char* id) { return std::find(cards.begin(), cards.end(), id) - cards.begin(); };
        const bool is_legal = at("close") < at("cover") && at("scrape") == 4;
        const Mark mark = quiz::mark(question, Laid{cards});
        CHECK(mark.is_right == is_legal);
        CHECK((mark.share == rules::Fraction{1, 1}) == is_legal);
        right += mark.is_right;
    } while (std::next_permutation(cards.begin(), cards.end()));
    CHECK(right == 12);     // by hand: four cards before the last, in half of whose 24 orders the register is closed first
}

TEST_CASE("order: partial credit by the fewest cards to move, none where a critical rule is broken")
{
    // Two rules of weight 3, so 6 points. Carried out before it is sealed: one card to move, one rule: 3 points lost.
    const Mark swapped = marked("sheeting-up", Laid{{"mist", "fold", "out", "seal"}});
    CHECK(swapped.share == rules::Fraction{1, 2});
    CHECK(swapped.told.size() == 1);
    CHECK(is_nothing(marked("set-up", Laid{{"signs", "close", "sheet", "scrape", "cover"}})));
    CHECK_FALSE(marked("set-up", Laid{{"signs", "close", "cover", "scrape"}}).is_right);
    CHECK_FALSE(marked("set-up", Laid{{}}).is_right);
}

TEST_CASE("order: the right order that is shown is right")
{
    for (const char* id : {"sheeting-up", "set-up"}) {
        const Question question = question_of(shipped_bank("sample"), id);
        CHECK(mark(question, one_right_order(std::get<PutInOrder>(question.kind))).is_right);
    }
}

TEST_CASE("number: any unit of the kind; a known mistake is named; a missing unit is told")
{
    CHECK(marked("largest-single-surface", Typed{"40 ft2"}).is_right);
    CHECK(marked("largest-single-surface", Typed{"3.72 m2"}).is_right);      // 3.716 m2, exact factor 0.3048 squared
    CHECK(marked("largest-single-surface", Typed{"20 sq ft"}).misconceptions == std::vector<std::string>{"outdoor-minor-limit"});
    CHECK(marked("largest-single-surface", Typed{"40"}).misconceptions == std::vector<std::string>{"unit-left-out"});
    CHECK(marked("largest-single-surface", Typed{"40 ft"}).misconceptions == std::vector<std::string>{"other-kind-of-unit"});
    CHECK(marked("pamphlet-earliest", Typed{"1440 h"}).is_right);
    CHECK(is_nothing(marked("pamphlet-earliest", Typed{"59 d"})));
}

TEST_CASE("a plain number may have a word behind it, but no unit; a share needs its percent sign")
{
    const NumberKey four{{}, 4.0};
    CHECK(mark_number("4", four) == NumberMark::right);
    CHECK(mark_number(" 4.0 cloths", four) == NumberMark::right);
    CHECK(mark_number("5", four) == NumberMark::wrong);
    CHECK(mark_number("4 ft", four) == NumberMark::wrong_kind);
    CHECK(mark_number("4 %", four) == NumberMark::wrong_kind);
    CHECK(mark_number("four", four) == NumberMark::wrong_kind);
    CHECK(mark_number("4 of 8", four) == NumberMark::wrong_kind);
    CHECK(mark_number("", four) == NumberMark::wrong_kind);
    const NumberKey third{NumberUnit::percent(), 0.333, 0.01};
    CHECK(mark_number("33 %", third) == NumberMark::right);
    CHECK(mark_number("33%", third) == NumberMark::right);
    CHECK(mark_number("33", third) == NumberMark::no_unit);
    CHECK(mark_number("50 %", third) == NumberMark::wrong);
    CHECK(mark_number("33 ft", third) == NumberMark::wrong_kind);
}

TEST_CASE("no typed text stops the marking", "[property]")
{
    const NumberKey plain{{}, 4.0}, percent{NumberUnit::percent(), 0.5}, length{text::Kind::length, 1.8288};
    CHECK(rc::check("any text is marked", [&](const std::string& text) {
        for (const NumberKey& key : {plain, percent, length}) mark_number(text, key);
        number_in(text);
    }));
}

TEST_CASE("plan: a point counts within its tolerance, for the smaller region where two overlap")
{
    const Question question = question_of(shipped_bank("sample"), "flap-door-place");
    const auto& asked = std::get<PointAtPlan>(question.kind);
    // The bedroom is 10 ft wide; its door stands in the east wall from 9 ft 6 in to 12 ft 2 in.
    CHECK(mark(question, Pointed{"", 10.0_ft, 11.0_ft}).is_right);
    CHECK(mark(question, Pointed{"", 10.4_ft, 11.0_ft}).is_right);
    CHECK(is_nothing(mark(question, Pointed{"", 10.6_ft, 11.0_ft})));
    CHECK(is_nothing(mark(question, Pointed{"", 5.0_ft, 5.0_ft})));
    CHECK(mark(question, Pointed{"entrance", {}, {}}).is_right);
    CHECK(mark(question, Pointed{"closet", {}, {}}).misconceptions == std::vector<std::string>{"every-door-gets-a-flap"});
    CHECK(is_nothing(mark(question, Pointed{"nowhere", {}, {}})));
    CHECK(region_at(asked, {8.0_ft, 0.0_ft})->id.text == "closet");
}

}
