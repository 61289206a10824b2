#include "debrief/terminal.hpp"

#include "debrief/wording.hpp"
#include "small_job.hpp"
#include "text/utf8.hpp"

#include <rapidcheck.h>

#include <algorithm>
#include <sstream>

using namespace flapdoor;
using namespace flapdoor::debrief;
using small_job::count;

namespace {

std::size_t widest(const std::string& text)
{
    std::size_t width = 0;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) width = std::max(width, text::columns(line));
    return width;
}

/// The text with its line breaks taken out, so that wrapped sentences can be found.
std::string flowing(const std::string& text)
{
    std::string out;
    for (const char c : text)
        if (c != ' ' && c != '\n') out += c;
    return out;
}

}

TEST_CASE("the terminal sheet and two beside each other keep to any width", "[property]")
{
    const auto a = small_job::make(small_job::careful, small_job::hostile + " a title far longer than anybody would ever write on a sheet, even in a hurry");
    const auto b = small_job::make(small_job::careless, "pãper ünd Ännchen");
    CHECK(rc::check([&] {
        const auto width = static_cast<std::size_t>(*rc::gen::inRange(60, 200));
        RC_ASSERT(widest(side_by_side(a.report, b.report, width)) <= width);
        RC_ASSERT(widest(side_by_side(b.report, a.report, width)) <= width);
        RC_ASSERT(widest(sheet_text(a.report, width)) <= width);
        RC_ASSERT(widest(sheet_text(b.report, width)) <= width);
    }));
    CHECK_THROWS_AS(sheet_text(a.report, 59), BrokenPromise);
}

TEST_CASE("the terminal sheet tells result, points, faults and where the lead is")
{
    const auto made = small_job::make(small_job::careless);
    const std::string text = sheet_text(made.report, 120);
    CHECK(text.find("NOT PASSED") != std::string::npos);
    CHECK(text.find(score_line(made.report)) != std::string::npos);
    CHECK(text.find("-" + points_text(made.sheet.lost) + "\n") != std::string::npos);
    for (const FaultLine& fault : made.report.faults) CHECK(flowing(text).find(flowing(fault.rule.says)) != std::string::npos);
    CHECK(text.find(to_hex(made.report.end_hash)) != std::string::npos);
    CHECK(text.find('\x1b') == std::string::npos);
}

TEST_CASE("beside every loading on the terminal stands what it is not")
{
    const auto a = small_job::make(small_job::careful), b = small_job::make(small_job::careless);
    // At this width no cell is broken, so the note stands whole in the line of its loading.
    for (const std::string& text : {sheet_text(b.report, 200), side_by_side(a.report, b.report, 200)}) {
        std::istringstream lines(text);
        std::size_t loadings = 0;
        for (std::string line; std::getline(lines, line);) {
            if (line.find("/ft2") == std::string::npos) continue;
            ++loadings;
            CHECK(line.find(loading_note) != std::string::npos);
        }
        CHECK(loadings >= 3);
    }
}

TEST_CASE("two plans beside each other show what each rule cost in each")
{
    const auto a = small_job::make(small_job::careful), b = small_job::make(small_job::careless);
    const std::string text = side_by_side(a.report, b.report, 120);
    std::istringstream lines(text);
    std::string signs;
    for (std::string line; std::getline(lines, line);)
        if (line.find("Signs are up before") != std::string::npos) signs = line;
    CHECK(signs.find("kept") != std::string::npos);
    CHECK(signs.find("-3") != std::string::npos);
    CHECK(signs.find("(!)") != std::string::npos);
    CHECK(text.find("Compare with care") == std::string::npos);
}

TEST_CASE("runs that cannot be compared say so")
{
    const auto a = small_job::make(small_job::careful), b = small_job::make(small_job::careful, "A small job", 2);
    CHECK(side_by_side(a.report, b.report).find("Compare with care: the two runs have different seeds.") != std::string::npos);
}
