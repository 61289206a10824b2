#include "quiz/statistics/group_report.hpp"

#include "../small_bank.hpp"
#include "tables.hpp"

#include <catch2/catch.hpp>

namespace flapdoor::quiz {

namespace {

AnswerTable named_table()
{
    AnswerTable table = twenty_people_with_choices();
    table.title = "Distances <before> lunch";
    return table;
}

}

TEST_CASE("a small group is told what it cannot tell, and the early figures stay hidden until asked for")
{
    const std::string sheet = group_sheet(group_report(named_table()));
    CHECK(says(sheet, "20 people, 8 questions"));
    CHECK(says(sheet, "Mean 4.45 of 8 points, standard deviation 1.96 of 8 points"));
    CHECK(says(sheet, "uncertain by up to 11 %"));
    CHECK(says(sheet, "mean little below 30 people"));
    CHECK_FALSE(says(sheet, "KR-20"));
    CHECK_FALSE(says(sheet, "-0.04"));
    CHECK(says(sheet, "8. Q8 - Check the key"));

    const std::string early = group_sheet(group_report(named_table(), true));
    CHECK(says(early, "KR-20) 0.62; 95 % interval 0.30 to 0.83"));
    CHECK(says(early, "About 20 questions like these would be needed for a reliability of 0.80"));
    CHECK(says(early, "early figures"));
    CHECK(says(early, "-0.04"));
}

TEST_CASE("from thirty people on all figures are shown, without caution")
{
    const std::string sheet = group_sheet(group_report(lsat_section_6()));
    CHECK(says(sheet, "KR-20) 0.29; 95 % interval"));
    CHECK(says(sheet, "uncertain by about 0.869 of 5 points"));
    CHECK_FALSE(says(sheet, "cannot tell yet"));
    CHECK(says(sheet, "357"));
}

TEST_CASE("no line of the sheet is wider than the terminal")
{
    for (const std::size_t width : {60u, 80u, 120u}) {
        std::string sheet = group_sheet(group_report(named_table(), true), width);
        while (!sheet.empty()) {
            const std::string line = sheet.substr(0, sheet.find('\n'));
            CHECK(line.size() <= width);
            sheet.erase(0, line.size() + 1);
        }
    }
}

TEST_CASE("the page holds the same figures and takes every word as text")
{
    const std::string page = group_page(group_report(named_table(), true));
    CHECK(says(page, "Distances &lt;before&gt; lunch"));
    CHECK_FALSE(says(page, "<before>"));
    CHECK(says(page, "KR-20) 0.62"));
    CHECK(says(page, "-0.04"));
    CHECK(says(page, "the whole floor"));
}

TEST_CASE("one person alone and one question alone have a sheet")
{
    CHECK(says(group_sheet(group_report(right_or_wrong({"101"}), true)), "1 person, 3 questions"));
    CHECK(says(group_sheet(group_report(right_or_wrong({"1", "0"}), true)), "No reliability"));
}

TEST_CASE("of many typed answers the most frequent are listed and the others counted")
{
    std::vector<std::string> patterns(12, "01");
    AnswerTable table = right_or_wrong(patterns);
    for (std::size_t i = 0; i < table.rows.size(); ++i) table.rows[i].answers[0]->chosen = {std::to_string(i) + " ft"};
    CHECK(says(group_sheet(group_report(table)), "6 other answers"));
}

}
