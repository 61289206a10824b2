#include "debrief/study_sheet.hpp"

#include "debrief/page.hpp"
#include "debrief/study_picture.hpp"
#include "debrief/terminal.hpp"
#include "debrief/wording.hpp"
#include "small_study.hpp"
#include "text/markup.hpp"
#include "text/utf8.hpp"

#include <sstream>

using namespace flapdoor;
using namespace flapdoor::debrief;
using small_job::count;

namespace {

const Study& example()
{
    static const Study study = small_study::made(small_study::both(), 12);
    return study;
}

Report banded(std::size_t runs)
{
    const auto plans = small_study::both();
    Report report = small_job::make(small_job::careless).report;
    report.bands = bands_of(small_study::made(plans, runs), 1);
    return report;
}

std::size_t lines_without(const std::string& text, const std::string& unit, const std::string& note)
{
    std::istringstream lines(text);
    std::size_t alone = 0;
    for (std::string line; std::getline(lines, line);)
        if (line.find(unit) != std::string::npos && line.find(note) == std::string::npos) ++alone;
    return alone;
}

}

TEST_CASE("the sheet of a study says how many runs it is of, and what it is not beside every loading")
{
    const std::string text = study_sheet(example(), 240);
    CHECK(text.find("Median and band over 12 runs") != std::string::npos);
    CHECK(count(text, "ug/ft2") > 8);
    CHECK(lines_without(text, "/ft2", std::string(model_note)) == 0);
    std::istringstream lines(study_sheet(example(), 60));
    for (std::string line; std::getline(lines, line);) CHECK(text::columns(line) <= 60);
    CHECK_THROWS_AS(study_sheet(example(), 59), BrokenPromise);
}

TEST_CASE("one and two runs are told as such, never as a band")
{
    const std::string one = study_sheet(small_study::made(small_study::both(), 1), 240);
    CHECK(one.find("One run with 12.5 %") != std::string::npos);
    CHECK(one.find("(one run)") != std::string::npos);
    CHECK(one.find("10 to 90") == std::string::npos);
    const std::string two = study_sheet(small_study::made(small_study::both(), 2), 240);
    CHECK(two.find("2 runs with 12.5 % of the usual dust parcels, too few for a band") != std::string::npos);
    for (const std::size_t runs : {1u, 2u}) {
        const std::string page_text = page(banded(runs));
        CHECK(count(page_text, "10 to 90") == 0);
        CHECK(count(page_text, runs == 1 ? "ask for ten or more" : "too few for a band") >= 1);
        CHECK(sheet_text(banded(runs), 120).find("10 to 90") == std::string::npos);
    }
}

TEST_CASE("the picture of a study stands alone and tells units, runs and what it is not")
{
    const std::string picture = study_picture(example());
    CHECK(picture.starts_with("<?xml"));
    CHECK(count(picture, "10 to 90 % of 12 runs") == 2);
    CHECK(count(picture, ">ug/ft2 (each line") == 1);
    CHECK(count(picture, ">ug (each line") == 1);
    CHECK(count(picture, ">ug/m3 (each line") == 1);
    CHECK(count(picture, "Training model, not a clearance prediction") >= 1);
    CHECK(count(picture, "http") == 1);     // the name of the drawing language
    const std::string hostile = study_picture(small_study::made(small_study::both(small_job::hostile), 2));
    CHECK(count(hostile, "<script") == 0);
}

TEST_CASE("a page with bands shows each level with its median, its band and this run")
{
    const Report report = banded(12);
    const std::string html = page(report);
    CHECK(count(html, "10 to 90 % of 12 runs") >= 3);
    CHECK(count(html, std::string(loading_note)) == 2);     // under the two floor maps, which show this run alone
    CHECK(count(html, ">How far to trust these figures<") == 1);
    CHECK(count(html, "One in ten") >= 1);
    for (const std::string_view sentence : left_out()) CHECK(count(html, text::escaped(sentence)) == 1);
    for (const PathwayBand& band : report.bands->pathways)
        if (band.share.high > 0.0) CHECK(count(html, text::escaped(how_well_known(band.pathway))) >= 1);
    const std::string plain = page(small_job::make(small_job::careless).report);
    CHECK(count(plain, ">How far to trust these figures<") == 1);
    CHECK(count(plain, "No study was made") == 1);
    CHECK(count(plain, "10 to 90") == 0);
}

TEST_CASE("nothing is told to two digits of what leaves with bags and sheeting")
{
    Report report = banded(12);
    const std::string html_before = page(report), text_before = sheet_text(report, 200);
    for (PathwayBand& band : report.bands->pathways)
        if (is_barely_known(band.pathway)) band.share = {0.1, 0.3717, 0.62, 12}, band.lead = {371.7, 371.7, 371.7, 12};
    const std::string html = page(report), text = sheet_text(report, 200);
    CHECK(count(html, "possible, up to most") >= 2);
    for (const char* figure : {"370 ug", "37 %"}) {     // something else may happen to be as much
        CHECK(count(html, figure) == count(html_before, figure));
        CHECK(count(text, figure) == count(text_before, figure));
    }
    CHECK(text.find("possible, up to most") != std::string::npos);
}

TEST_CASE("two plans beside each other show their bands, or neither does")
{
    Report a = banded(12), b = banded(12);
    const std::string both = side_by_side(a, b, 240);
    CHECK(both.find("10 to 90 % of 12 runs") != std::string::npos);
    CHECK(lines_without(both, "/ft2", std::string(model_note)) == 0);
    b.bands.reset();
    const std::string one = side_by_side(a, b, 240);
    CHECK(one.find("10 to 90") == std::string::npos);
    CHECK(lines_without(one, "/ft2", std::string(loading_note)) == 0);
}
