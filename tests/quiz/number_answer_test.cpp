#include "quiz/number_answer.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <string>

namespace flapdoor::quiz {

namespace {

const NumberKey six_feet{text::Kind::length, (6.0_ft).si, (0.1_ft).si, 0.0};
const NumberKey forty_square_feet{text::Kind::area, (40.0_ft2).si, 0.0, 0.02};

}

TEST_CASE("any unit of the right kind will do for a right answer")
{
    for (const char* answer : {"6 ft", "72 in", "6ft", " 6 ft ", "5 ft 12 in", "1.83 m", "183 cm", "1828.8 mm"}) {
        INFO(answer);
        CHECK(mark_number(answer, six_feet) == NumberMark::right);
    }
    CHECK(mark_number("40 ft2", forty_square_feet) == NumberMark::right);
    CHECK(mark_number("3.72 m2", forty_square_feet) == NumberMark::right);
    CHECK(mark_number("1 h", {text::Kind::time, 3600.0, 0.0, 0.0}) == NumberMark::right);
    CHECK(mark_number("60 min", {text::Kind::time, 3600.0, 0.0, 0.0}) == NumberMark::right);
    CHECK(mark_number("593.3 C", {text::Kind::temperature, 866.483, 0.5, 0.0}) == NumberMark::right);
}

TEST_CASE("a number without its unit is neither right nor wrong: the unit is asked for")
{
    for (const char* answer : {"6", "6.0", "-6", "+6", "1,000", " 6 ", "0"}) {
        INFO(answer);
        CHECK(mark_number(answer, six_feet) == NumberMark::no_unit);
    }
}

TEST_CASE("a unit of another kind and what is no number are told apart from a wrong number")
{
    for (const char* answer : {"6 min", "6 ft2", "six feet", "", " ", "ft", "-", ".", ",", "6 furlongs", "6 ft or so", "1e9 m", "nan ft", "inf ft"}) {
        INFO(answer);
        CHECK(mark_number(answer, six_feet) == NumberMark::wrong_kind);
    }
}

TEST_CASE("off by more than allowed is wrong, on either side, and the sign counts")
{
    for (const char* answer : {"5 ft", "7 ft", "6 in", "6.11 ft", "5.89 ft", "-6 ft", "0 ft"}) {
        INFO(answer);
        CHECK(mark_number(answer, six_feet) == NumberMark::wrong);
    }
    CHECK(mark_number("41 ft2", forty_square_feet) == NumberMark::wrong);
}

TEST_CASE("exactly as far off as allowed is still right, in every unit")
{
    for (const char* answer : {"6.1 ft", "5.9 ft", "73.2 in", "70.8 in"}) {
        INFO(answer);
        CHECK(mark_number(answer, six_feet) == NumberMark::right);
    }
    CHECK(mark_number("40.8 ft2", forty_square_feet) == NumberMark::right);
    CHECK(mark_number("39.2 ft2", forty_square_feet) == NumberMark::right);
}

TEST_CASE("without tolerance the same quantity in another unit is still the same")
{
    const NumberKey exact{text::Kind::length, (6.0_ft).si, 0.0, 0.0};
    for (const char* answer : {"6 ft", "72 in", "182.88 cm", "1.8288 m"}) {
        INFO(answer);
        CHECK(mark_number(answer, exact) == NumberMark::right);
    }
    CHECK(mark_number("1.8289 m", exact) == NumberMark::wrong);
}

TEST_CASE("how far apart is no temperature")
{
    REQUIRE(difference_in("9 F").has_value());
    CHECK(difference_in("9 F")->si == Approx(5.0));
    CHECK(difference_in("5 C")->si == Approx(5.0));
    CHECK(difference_in("1 ft")->si == Approx((1.0_ft).si));
    CHECK(difference_in("5 %")->si == Approx(0.05));
    CHECK(difference_in("4")->si == 4.0);
    CHECK_FALSE(difference_in("5 parrots").has_value());
    const NumberKey hot{text::Kind::temperature, number_in("1100 F")->si, difference_in("20 F")->si, 0.0};
    CHECK(mark_number("1085 F", hot) == NumberMark::right);
    CHECK(mark_number("600 C", hot) == NumberMark::right);
    CHECK(mark_number("1075 F", hot) == NumberMark::wrong);
}

TEST_CASE("the larger of the two tolerances holds")
{
    CHECK(mark_number("6.5 ft", {text::Kind::length, (6.0_ft).si, (0.1_ft).si, 0.1}) == NumberMark::right);
    CHECK(mark_number("6.5 ft", {text::Kind::length, (6.0_ft).si, (0.6_ft).si, 0.01}) == NumberMark::right);
    CHECK(mark_number("6.5 ft", {text::Kind::length, (6.0_ft).si, (0.1_ft).si, 0.01}) == NumberMark::wrong);
    CHECK(mark_number("-6.5 ft", {text::Kind::length, -(6.0_ft).si, 0.0, 0.1}) == NumberMark::right);   // a share of the size of the key
}

TEST_CASE("whatever is typed gets a mark", "[property]")
{
    CHECK(rc::check([](const std::string& typed) {
        const NumberMark mark = mark_number(typed, six_feet);
        RC_ASSERT(mark == NumberMark::right || mark == NumberMark::wrong || mark == NumberMark::no_unit || mark == NumberMark::wrong_kind);
    }));
    CHECK(rc::check([] {
        const auto tenths = *rc::gen::inRange(-2000, 2000);
        const std::string typed = std::to_string(tenths) + " mm";
        const bool is_near = tenths >= 1799 && tenths <= 1859;     // 6 ft, a tenth of a foot either way
        RC_ASSERT((mark_number(typed, six_feet) == NumberMark::right) == is_near);
    }));
}

}
