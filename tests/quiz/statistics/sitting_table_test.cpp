#include "quiz/statistics/sitting_table.hpp"

#include "../small_bank.hpp"
#include "quiz/statistics/group_report.hpp"

namespace flapdoor::quiz {

namespace {

/// A finished sitting of two questions.
SittingResult sitting(const std::string& person, const Bank& bank, const std::string& choice, const std::string& typed)
{
    PaperItem choose{"sample/floor-reach", 1, question_of(bank, "floor-reach")};
    Question number;
    number.id.text = "n";
    number.points = 2;
    Number asked;
    asked.answer.text = "6 ft";
    asked.answer.unit = text::Kind::length;
    asked.answer.si = 1.8288;
    number.kind = asked;
    const PaperItem type{"mine/n", 1, number};
    SittingResult result;
    result.person = person;
    result.is_finished = true;
    result.answers.push_back(answered(choose, choice.empty() ? Response(LeftOut{}) : Response(Chosen{{choice}}), {}));
    result.answers.push_back(answered(type, Typed{typed}, {}));
    return result;
}

}

TEST_CASE("kept sittings become a table, with the texts of their bank")
{
    const std::vector<Bank> banks{shipped_bank("sample")};
    std::vector<SittingResult> sittings{sitting("ann", banks[0], "six", "6 ft"), sitting("ben", banks[0], "two", "7 ft"), sitting("cleo", banks[0], "", "6")};
    sittings.push_back(sitting("dan", banks[0], "six", "6 ft"));
    sittings.back().is_finished = false;
    const AnswerTable table = table_of(sittings, banks);
    REQUIRE(table.questions.size() == 2);
    REQUIRE(table.rows.size() == 3);
    CHECK(table.questions[0].id == "sample/floor-reach");
    CHECK(table.questions[0].title.find("floor sheeting") != std::string::npos);
    CHECK(table.questions[0].offered.size() == 3);
    CHECK(table.questions[1].most == 2.0);
    CHECK(table.rows[0].answers[0]->points == 1.0);
    CHECK(table.rows[0].answers[1]->points == 2.0);
    CHECK(table.rows[1].answers[0]->chosen == std::vector<std::string>{"two"});
    CHECK(table.rows[1].answers[1]->chosen == std::vector<std::string>{"7 ft"});
    CHECK(table.rows[2].answers[0]->chosen.empty());
    CHECK(table.rows[2].answers[1]->chosen == std::vector<std::string>{"unit-left-out"});
    const std::string sheet = group_sheet(group_report(table));
    CHECK(sheet.find("3 people, 2 questions") != std::string::npos);
    CHECK(sheet.find("unit-left-out") != std::string::npos);
}

TEST_CASE("people who sat different papers share the questions they share")
{
    const std::vector<Bank> banks{shipped_bank("sample")};
    std::vector<SittingResult> sittings{sitting("ann", banks[0], "six", "6 ft"), sitting("ben", banks[0], "two", "7 ft")};
    sittings[0].answers.erase(sittings[0].answers.begin());
    const AnswerTable table = table_of(sittings, banks);
    CHECK(table.questions[0].id == "mine/n");
    CHECK(table.questions.size() == 2);
    CHECK_FALSE(table.is_complete());
    CHECK(question_statistics(table)[1].people == 1);
}

TEST_CASE("what a paper fills into a question is left open in its title")
{
    Bank bank;
    bank.id = "mine";
    Question question;
    question.id.text = "n";
    question.text = phrase("How many cloths does {floor} take?");
    bank.questions.push_back(question);
    const std::vector<Bank> banks{bank};
    const std::vector<SittingResult> sittings{sitting("ann", shipped_bank("sample"), "six", "6 ft")};
    CHECK(table_of(sittings, banks).questions[1].title == "How many cloths does ... take?");
}

TEST_CASE("no finished sitting gives no rows")
{
    CHECK(table_of({}, {}).rows.empty());
}

}
