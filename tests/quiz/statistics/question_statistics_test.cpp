#include "quiz/statistics/question_statistics.hpp"

#include "quiz/statistics/findings.hpp"
#include "tables.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

namespace flapdoor::quiz {

namespace {

constexpr double near = 5e-7;   // the figures below have six decimals

auto about(double value) { return Approx(value).margin(near).epsilon(0.0); }

bool has(const QuestionStatistics& question, Finding what)
{
    return std::any_of(question.findings.begin(), question.findings.end(), [&](const Found& found) { return found.what == what; });
}

}

// Expected figures: computed for this data with R 4.2.2, psych 2.2.9 (psych::alpha: r.drop, alpha if dropped) and again with
// NumPy/SciPy 1.10.1; both agree to the six digits given. D by hand: 27 % of 20 people are 5.
TEST_CASE("the figures of eight questions and twenty people are those of two other programs")
{
    const auto questions = question_statistics(right_or_wrong(twenty_people));
    REQUIRE(questions.size() == 8);
    struct Row { double p, upper, lower, d, with_total, with_rest; };
    const std::vector<Row> expected{
        {0.90, 5, 3, 0.4, 0.340342, 0.191297}, {0.80, 5, 3, 0.4, 0.510513, 0.330465}, {0.65, 5, 1, 0.8, 0.666896, 0.488486},
        {0.55, 5, 1, 0.8, 0.581496, 0.367037}, {0.45, 4, 0, 0.8, 0.681482, 0.498638}, {0.40, 4, 0, 0.8, 0.609216, 0.406387},
        {0.35, 4, 0, 0.8, 0.540652, 0.326818}, {0.35, 2, 2, 0.0, 0.211321, -0.039279}};
    for (std::size_t j = 0; j < expected.size(); ++j) {
        INFO("Q" << j + 1);
        CHECK(questions[j].people == 20);
        CHECK(questions[j].group == 5);
        CHECK(questions[j].difficulty == about(expected[j].p));
        CHECK(questions[j].upper == about(expected[j].upper));
        CHECK(questions[j].lower == about(expected[j].lower));
        CHECK(questions[j].upper_lower == about(expected[j].d));
        CHECK(questions[j].with_total.value() == about(expected[j].with_total));
        CHECK(questions[j].with_rest.value() == about(expected[j].with_rest));
    }
    CHECK(questions[4].difficulty_error == about(0.111243));    // sqrt(0.45 x 0.55 / 20), by hand
}

// psych::alpha on the data set of Bock & Lieberman 1970, and SciPy; the p are also those printed in the paper's Table (memory).
TEST_CASE("the figures of section 6 of the admission test are the published ones")
{
    const auto questions = question_statistics(lsat_section_6());
    REQUIRE(questions.size() == 5);
    const std::vector<double> p{0.924, 0.709, 0.553, 0.763, 0.870}, with_rest{0.112833, 0.153178, 0.172779, 0.144428, 0.121596};
    for (std::size_t j = 0; j < 5; ++j) {
        CHECK(questions[j].people == 1000);
        CHECK(questions[j].group == 270);
        CHECK(questions[j].difficulty == about(p[j]));
        CHECK(questions[j].with_rest.value() == about(with_rest[j]));
    }
}

// Shares and correlations: R and SciPy as above. D_o by hand from the groups.
TEST_CASE("the wrong answers are counted by group and set beside the rest of the paper")
{
    const auto questions = question_statistics(twenty_people_with_choices());
    const auto& answers = questions[4].answers;
    REQUIRE(answers.size() == 4);
    struct Row { const char* id; bool is_key; int upper, middle, lower; double share, d, with_rest; };
    const std::vector<Row> expected{
        {"A", false, 1, 2, 3, 0.30, -0.4, -0.135333}, {"B", true, 4, 5, 0, 0.45, 0.8, 0.498638},
        {"C", false, 0, 2, 2, 0.20, -0.4, -0.387609}, {"D", false, 0, 1, 0, 0.05, 0.0, -0.142278}};
    for (std::size_t o = 0; o < expected.size(); ++o) {
        INFO(expected[o].id);
        CHECK(answers[o].id == expected[o].id);
        CHECK(answers[o].is_key == expected[o].is_key);
        CHECK(answers[o].upper == expected[o].upper);
        CHECK(answers[o].middle == expected[o].middle);
        CHECK(answers[o].lower == expected[o].lower);
        CHECK(answers[o].share == about(expected[o].share));
        CHECK(answers[o].upper_lower == about(expected[o].d));
        CHECK(answers[o].with_rest.value() == about(expected[o].with_rest));
    }
}

TEST_CASE("the planted bad question is told to be looked at, and the good ones are not")
{
    const auto questions = question_statistics(twenty_people_with_choices());
    CHECK(has(questions[7], Finding::check_the_key));
    for (std::size_t j = 0; j < 7; ++j) {
        INFO("Q" << j + 1);
        CHECK_FALSE(has(questions[j], Finding::check_the_key));
    }
    CHECK(questions[4].findings.empty());
}

TEST_CASE("a key that was set wrong is seen")
{
    // The answer of the good people was B; the key says A.
    AnswerTable table = twenty_people_with_choices();
    for (auto& offered : table.questions[4].offered) offered.is_key = offered.id == "A";
    for (AnswerRow& row : table.rows) row.answers[4]->points = row.answers[4]->chosen[0] == "A" ? 1.0 : 0.0;
    const auto questions = question_statistics(table);
    CHECK(has(questions[4], Finding::check_the_key));
    const Found strong{Finding::strong_choose_another, "B"}, ambiguous{Finding::ambiguous_answer, "B"};
    CHECK(std::count(questions[4].findings.begin(), questions[4].findings.end(), strong) == 1);
    CHECK(std::count(questions[4].findings.begin(), questions[4].findings.end(), ambiguous) == 0);     // told once
    CHECK(tell(strong, questions[4]).find("\"six feet\"") != std::string::npos);
}

TEST_CASE("a wrong answer that goes with being good is told to be ambiguous")
{
    // Half of the good people read it another way: C; the weak ones guess A or D.
    AnswerTable table = right_or_wrong({"111110", "111101", "111011", "111000", "011110", "011101", "011011", "011010", "000001", "000010", "000100", "100000"});
    table.questions[0].offered = {{"A", ""}, {"B", "", true}, {"C", ""}, {"D", ""}};
    for (std::size_t i = 0; i < table.rows.size(); ++i) table.rows[i].answers[0]->chosen = {table.rows[i].answers[0]->points > 0.0 ? "B" : i < 8 ? "C" : i % 2 == 0 ? "A" : "D"};
    const auto findings = question_statistics(table)[0].findings;
    CHECK(std::count(findings.begin(), findings.end(), Found{Finding::ambiguous_answer, "C"}) == 1);
    CHECK(std::none_of(findings.begin(), findings.end(), [](const Found& found) { return found.answer == "A" || found.answer == "D"; }));
}

TEST_CASE("a question that all or none have right says little, and is not taken for one with a wrong key")
{
    const auto questions = question_statistics(right_or_wrong({"101", "101", "110", "110"}));
    CHECK_FALSE(questions[0].with_rest.has_value());
    CHECK(questions[0].findings == std::vector<Found>{{Finding::says_little, ""}});
    CHECK(tell(questions[0].findings[0], questions[0]) == "Says little: everybody has it right.");
}

TEST_CASE("idle answers are told from thirty people on")
{
    AnswerTable few = twenty_people_with_choices();
    few.questions[4].offered.push_back({"E", "nothing"});
    CHECK_FALSE(has(question_statistics(few)[4], Finding::idle_answer));
    AnswerTable many = few;
    for (AnswerRow row : few.rows) {
        row.person += "b";
        many.rows.push_back(row);
    }
    CHECK(has(question_statistics(many)[4], Finding::idle_answer));
}

TEST_CASE("of people with the same points the one whose name comes first counts as better")
{
    AnswerTable table = right_or_wrong({"10", "01", "10", "01"});
    const auto group_of_first = [&] { return question_statistics(table)[0].upper; };
    CHECK(group_of_first() == 1.0);             // p00001 has it right
    std::swap(table.rows[0].person, table.rows[1].person);
    CHECK(group_of_first() == 0.0);
    std::reverse(table.rows.begin(), table.rows.end());     // the order of the rows does not matter
    CHECK(group_of_first() == 0.0);
}

TEST_CASE("typed answers are listed by how often they were given, the right one marked, blanks last")
{
    AnswerTable table = right_or_wrong({"11", "11", "01", "01", "01", "00", "10"});
    const std::vector<std::string> typed{"6 ft", "6 ft", "6 in", "6 in", "6 in", "", "6 ft"};
    for (std::size_t i = 0; i < typed.size(); ++i) table.rows[i].answers[0]->chosen = typed[i].empty() ? std::vector<std::string>{} : std::vector<std::string>{typed[i]};
    const auto answers = question_statistics(table)[0].answers;
    REQUIRE(answers.size() == 3);
    CHECK(answers[0].id == "6 ft");
    CHECK(answers[0].is_key);
    CHECK(answers[1].id == "6 in");
    CHECK_FALSE(answers[1].is_key);
    CHECK(answers[2].id.empty());
    CHECK(answers[2].people() == 1);
}

TEST_CASE("people with different questions are compared by the share of their points")
{
    AnswerTable table = right_or_wrong({"111", "110", "100", "000"});
    table.rows[0].answers[2].reset();
    table.rows[3].answers[0].reset();
    const auto questions = question_statistics(table);
    CHECK(questions[0].people == 3);
    CHECK(questions[0].difficulty == 1.0);
    CHECK(questions[2].people == 3);
    CHECK(questions[2].difficulty == 0.0);
    CHECK(questions[1].people == 4);
}

TEST_CASE("a question nobody had is left out, one that one person had alone has no correlations")
{
    AnswerTable table = right_or_wrong({"111"});
    table.rows[0].answers[1].reset();
    table.rows[0].answers[2].reset();
    const auto questions = question_statistics(table);
    REQUIRE(questions.size() == 1);
    CHECK(questions[0].group == 0);
    CHECK_FALSE(questions[0].with_rest.has_value());
}

}
