#include "debrief/study_file.hpp"

#include "debrief/csv_line.hpp"
#include "debrief/wording.hpp"
#include "small_study.hpp"

#include <rapidcheck.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <limits>

using namespace flapdoor;
using namespace flapdoor::debrief;
using small_job::count;

namespace {

const Study& hostile_study()
{
    static const Study study = small_study::made(small_study::both(small_job::hostile), 3);
    return study;
}

std::string with(std::string text, const std::string& what, const std::string& instead)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), instead);
}

std::string first_problem(const std::string& text)
{
    const auto read = parse_study(text, "s.csv");
    return read ? std::string("none") : describe(read.error().front());
}

/// Line of the text, from 1, its end included.
std::string line_of(const std::string& text, std::size_t number)
{
    std::size_t at = 0;
    for (std::size_t i = 1; i < number; ++i) at = text.find('\n', at) + 1;
    return text.substr(at, text.find('\n', at) + 1 - at);
}

}

TEST_CASE("a study written and read is the same, whatever its things are called")
{
    const std::string text = study_text(hostile_study());
    const auto read = parse_study(text, "s.csv");
    REQUIRE(read);
    CHECK(*read == hostile_study());
    CHECK(study_text(*read) == text);
    CHECK(count(text, std::string(model_note)) == 1);
    CHECK(line_of(text, 2) == "# program,1.2.3\r\n");
    CHECK(line_of(text, 7).starts_with("# plan,careless,"));
    CHECK(line_of(text, 8).starts_with("seed,plan,site,"));
    // Lines may end as other programs end them, and stand in any order.
    std::string unix_text;
    for (const char c : text)
        if (c != '\r') unix_text += c;
    CHECK(parse_study(unix_text, "s.csv").value() == hostile_study());
    std::string turned = text.substr(0, text.find("\n1,") + 1);
    for (std::size_t line = 14; line >= 9; --line) turned += line_of(text, line);
    CHECK(parse_study(turned, "s.csv").value() == hostile_study());
}

TEST_CASE("any numbers that a study may hold come back bit for bit", "[property]")
{
    CHECK(rc::check([] {
        Study study = hostile_study();
        for (StudyRow& row : study.rows) {
            row.hash = *rc::gen::arbitrary<std::uint64_t>();
            for (auto& value : row.values) {
                if (*rc::gen::inRange(0, 10) == 0) value.reset();
                else value = *rc::gen::arbitrary<double>();
            }
        }
        RC_ASSERT(parse_study(study_text(study), "s.csv").value() == study);
    }));
}

TEST_CASE("every column's head reads back")
{
    for (const StudyColumn& column : hostile_study().basis.columns) {
        INFO(head_of(column));
        REQUIRE(column_from(head_of(column)));
        CHECK(*column_from(head_of(column)) == column);
    }
    for (const char* wrong : {"", "seed", "sill", "sill x: y [ug/ft2]", "sill 1 y", "took 3: x", "way-out 0: none [ug]", "way-out 99: x [ug]", "parameter 17: x", "took [min"})
        CHECK_FALSE(column_from(wrong));
}

TEST_CASE("a damaged study is told with line and column")
{
    const std::string text = study_text(hostile_study());
    CHECK(first_problem("") == "s.csv:1:1: expected another line, found the end of the file");
    CHECK(first_problem("seed,plan\n") == "s.csv:1:1: expected `# flapdoor study`, found `seed`");
    CHECK(first_problem(with(text, "# flapdoor study,1,", "# flapdoor study,2,")) == "s.csv:1:18: expected format 1, found `2`");
    CHECK(first_problem(with(text, "# detail,0.125", "# detail,3")) == "s.csv:3:10: expected a share above 0, at most 1, found `3`");
    CHECK(first_problem(with(text, "seed,plan,site", "seed,plan,sight")) == "s.csv:8:11: expected `site`, found `sight`");
    CHECK(first_problem(with(text, "\n1,careful,", "\nx,careful,")) == "s.csv:9:1: expected a seed, found `x`");
    CHECK(first_problem(with(text, "\n1,careless,", "\n1,other,")) == "s.csv:10:3: expected a plan named above, found `other`");
    CHECK(first_problem(with(text, "\n1,careless,", "\n1,careful,")) == "s.csv:10:1: expected each seed and plan once, found those of line 9 again");
    CHECK(first_problem(text.substr(0, text.size() - 5)).find("the line is cut off") != std::string::npos);
    CHECK(first_problem(with(text, "\n1,careful,", "\n1,careful,12,")).starts_with("s.csv:9:"));
    CHECK(first_problem(with(text, "\n2,careful", "\n\"2,careful")).find("s.csv:11:1: expected a quote that is closed") == 0);
    CHECK(first_problem(with(text, "# program,1.2.3", "# program,1\x01")).find("control characters") != std::string::npos);
    // Several at once.
    const auto several = parse_study(with(with(text, "\n1,careful,", "\nx,careful,"), "\n3,careful,", "\ny,careful,"), "s.csv");
    REQUIRE_FALSE(several);
    CHECK(several.error().size() == 2);
    CHECK(several.error()[1].where.line == 13);
}

TEST_CASE("no cut and no changed byte makes the reader crash or read what is not there", "[property]")
{
    const std::string text = study_text(hostile_study());
    CHECK(rc::check([&] {
        std::string damaged = text.substr(0, *rc::gen::inRange<std::size_t>(0, text.size() + 1));
        const auto changes = *rc::gen::inRange(0, 4);
        for (int i = 0; i < changes && !damaged.empty(); ++i) damaged[*rc::gen::inRange<std::size_t>(0, damaged.size())] = *rc::gen::arbitrary<char>();
        const auto read = parse_study(damaged, "s.csv");
        if (!read) {
            RC_ASSERT(!read.error().empty() && read.error().size() <= 20);
            for (const Problem& problem : read.error()) RC_ASSERT(problem.where.line >= 1 && problem.where.column >= 1);
        }
        else RC_ASSERT(parse_study(study_text(*read), "s.csv").value() == *read);
    }));
}

TEST_CASE("cells are quoted as the standard has it")
{
    const std::vector<std::string> cells{"a", "b,c", "d\"e\"", "", "f"};
    const std::string line = csv_line(cells);
    CHECK(line == "a,\"b,c\",\"d\"\"e\"\"\",,f\r\n");
    const auto read = csv_cells(line.substr(0, line.size() - 2), "f", 3);
    REQUIRE(read);
    REQUIRE(read->size() == cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) CHECK((*read)[i].text == cells[i]);
    CHECK((*read)[2].column == 9);
    CHECK_FALSE(csv_cells("\"a\"b", "f", 1));
    CHECK_THROWS_AS(csv_line(std::vector<std::string>{"a\nb"}), BrokenPromise);
}

TEST_CASE("a study file that cannot be read or written is told by its name")
{
    const std::string folder = std::filesystem::temp_directory_path().string() + "/flapdoor-study-test";
    std::filesystem::create_directories(folder);
    const std::string path = folder + "/s.csv";
    REQUIRE(save_study(hostile_study(), path));
    CHECK(load_study(path).value() == hostile_study());
    CHECK_FALSE(load_study(folder + "/none.csv"));
    CHECK_FALSE(save_study(hostile_study(), folder + "/no/such/s.csv"));
    std::filesystem::remove_all(folder);
}
