#include "quiz/statistics/paper_statistics.hpp"

#include "quiz/statistics/moments.hpp"
#include "tables.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

namespace flapdoor::quiz {

namespace {

auto about(double value, double margin = 5e-7) { return Approx(value).margin(margin).epsilon(0.0); }

}

// Computed for this data with R 4.2.2, psych 2.2.9 (alpha, alpha.ci) and NumPy/SciPy 1.10.1; KR-21 by hand. The interval is
// printed by psych with two digits.
TEST_CASE("the reliability of eight questions and twenty people is that of two other programs")
{
    const PaperStatistics paper = paper_statistics(right_or_wrong(twenty_people));
    CHECK(paper.people == 20);
    CHECK(paper.most == 8.0);
    CHECK(paper.mean == about(4.45));
    CHECK(paper.variance == about(3.6475));
    CHECK(paper.deviation.value() == about(1.959457));
    REQUIRE(paper.reliability);
    CHECK(paper.reliability->is_kr20);
    CHECK(paper.reliability->alpha == about(0.620386));
    CHECK(paper.reliability->kr21.value() == about(0.524136));
    CHECK(paper.reliability->error_of_measurement == about(1.207277));
    CHECK(paper.reliability->interval.value().low == about(0.30, 0.005));
    CHECK(paper.reliability->interval.value().high == about(0.83, 0.005));
    const std::vector<double> without{0.616878, 0.585742, 0.535088, 0.572879, 0.529487, 0.560510, 0.585352, 0.685291};
    for (std::size_t j = 0; j < without.size(); ++j) CHECK(paper.reliability->alpha_without[j].value() == about(without[j]));
    CHECK(lengthening_for(paper.reliability->alpha, 0.80) == about(2.447601));
    CHECK(lengthened(0.395135, 2.0) == about(0.566447));    // of the two halves, odd and even questions
}

// The same two programs on the data of Bock & Lieberman 1970; other programs print alpha as 0.295 (Rizopoulos 2006,
// J. Stat. Softw. 17(5), memory).
TEST_CASE("the reliability of section 6 of the admission test is the published one")
{
    const PaperStatistics paper = paper_statistics(lsat_section_6());
    CHECK(paper.mean == about(3.819));
    CHECK(paper.variance == about(1.070239));
    REQUIRE(paper.reliability);
    CHECK(paper.reliability->alpha == about(0.294997));
    CHECK(paper.reliability->error_of_measurement == about(0.869067));
    const std::vector<double> without{0.275356, 0.237584, 0.216799, 0.245933, 0.266294};
    for (std::size_t j = 0; j < without.size(); ++j) CHECK(paper.reliability->alpha_without[j].value() == about(without[j]));
    const std::vector<int> people{3, 20, 85, 237, 357, 298};
    REQUIRE(paper.classes.size() == people.size());
    for (std::size_t points = 0; points < people.size(); ++points) {
        CHECK(paper.classes[points].from == static_cast<double>(points));
        CHECK(paper.classes[points].people == people[points]);
    }
}

// psych::alpha gives 0.90866511 for this table.
TEST_CASE("answers with partial credit get Cronbach's alpha")
{
    AnswerTable table;
    for (const char* id : {"a", "b", "c"}) table.questions.push_back({id, "", 10.0, {}});
    const std::vector<std::vector<double>> points{{10, 8, 9}, {7, 9, 8}, {5, 6, 4}, {9, 9, 10}, {3, 5, 6}, {6, 4, 5}};
    for (std::size_t i = 0; i < points.size(); ++i) {
        AnswerRow row{numbered(i), {}};
        for (const double it : points[i]) row.answers.push_back(GivenAnswer{it, {}});
        table.rows.push_back(row);
    }
    const PaperStatistics paper = paper_statistics(table);
    REQUIRE(paper.reliability);
    CHECK_FALSE(paper.reliability->is_kr20);
    CHECK_FALSE(paper.reliability->kr21.has_value());
    CHECK(paper.reliability->alpha == about(0.90866511, 5e-9));
    CHECK(paper.classes.size() == 10);
}

TEST_CASE("a paper is judged as one thing only where everybody had the same questions and differs")
{
    CHECK_FALSE(paper_statistics(right_or_wrong({"110"})).reliability);
    CHECK_FALSE(paper_statistics(right_or_wrong({"1", "0"})).reliability);
    CHECK_FALSE(paper_statistics(right_or_wrong({"10", "01"})).reliability);
    AnswerTable drawn = right_or_wrong({"110", "100", "111"});
    drawn.rows[0].answers[2].reset();
    const PaperStatistics paper = paper_statistics(drawn);
    CHECK_FALSE(paper.reliability);
    CHECK(paper.most == 1.0);
    CHECK(paper.mean == about((1.0 + 1.0 / 3.0 + 1.0) / 3.0));
}

TEST_CASE("questions that contradict each other give an alpha below zero, and an error no larger than the spread")
{
    const PaperStatistics paper = paper_statistics(right_or_wrong({"10", "01", "11", "10", "01"}));
    REQUIRE(paper.reliability);
    CHECK(paper.reliability->alpha < 0.0);
    CHECK(paper.reliability->error_of_measurement == about(paper.deviation.value()));
}

TEST_CASE("everybody stands in one class of scores, whatever the points", "[property]")
{
    CHECK(rc::check([] {
        AnswerTable table;
        const auto questions = *rc::gen::inRange<std::size_t>(1, 6);
        for (std::size_t j = 0; j < questions; ++j) table.questions.push_back({"q", "", 0.5 * *rc::gen::inRange(1, 9), {}});
        const auto people = *rc::gen::inRange<std::size_t>(1, 12);
        for (std::size_t i = 0; i < people; ++i) {
            AnswerRow row{numbered(i), {}};
            for (const AskedQuestion& question : table.questions) row.answers.push_back(GivenAnswer{question.most * *rc::gen::inRange(0, 9) / 8.0, {}});
            table.rows.push_back(row);
        }
        const PaperStatistics paper = paper_statistics(table);
        int counted = 0;
        for (const ScoreClass& one : paper.classes) counted += one.people;
        RC_ASSERT(counted == static_cast<int>(people));
        if (paper.reliability) RC_ASSERT(paper.reliability->alpha <= 1.0 + 1e-12);
    }));
}

}
