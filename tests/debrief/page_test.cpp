#include "debrief/page.hpp"

#include "debrief/pathway_chart.hpp"
#include "debrief/timeline.hpp"
#include "debrief/wording.hpp"
#include "html_checks.hpp"
#include "small_job.hpp"

#include <rapidcheck.h>

#include <cmath>
#include <cstdlib>
#include <map>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::debrief;
using html_checks::imbalance;
using small_job::count;

namespace {

/// What a reader sees: tags left out, each run of spaces as one.
std::string read_aloud(const std::string& html)
{
    std::string out;
    bool is_tag = false;
    for (const char c : html) {
        if (c == '<') is_tag = true;
        const bool is_space = is_tag || c == ' ' || c == '\n';
        if (!is_space) out += c;
        else if (!out.empty() && out.back() != ' ') out += ' ';
        if (c == '>') is_tag = false;
    }
    return out;
}

/// Places of `unit` after which the note does not follow soon.
std::size_t loadings_alone(const std::string& text, const std::string& unit, std::size_t reach)
{
    std::size_t alone = 0;
    for (std::size_t at = text.find(unit); at != std::string::npos; at = text.find(unit, at + 1))
        if (text.substr(at, reach).find(loading_note) == std::string::npos) ++alone;
    return alone;
}

std::string between(const std::string& text, const std::string& from, const std::string& to)
{
    const std::size_t begin = text.find(from);
    REQUIRE(begin != std::string::npos);
    const std::size_t end = text.find(to, begin);
    REQUIRE(end != std::string::npos);
    return text.substr(begin, end - begin);
}

}

TEST_CASE("the page closes every element it opens")
{
    CHECK(imbalance("<p><b>x</b><br></p>").empty());
    CHECK_FALSE(imbalance("<p><b>x</p></b>").empty());
    CHECK_FALSE(imbalance("<p>").empty());
    for (const std::string& cards : {small_job::careful, small_job::careless, small_job::signs}) CHECK(imbalance(page(small_job::make(cards).report)) == "");
}

TEST_CASE("whatever files call their things stays text on the page")
{
    const auto made = small_job::make(small_job::careless, small_job::hostile);
    const std::string html = page(made.report);
    CHECK(count(html, "<script") == 0);
    CHECK(count(html, "&lt;script&gt;") > 4);
    CHECK(count(html, "before the work <begins>") == 0);
    CHECK(imbalance(html) == "");
}

TEST_CASE("the page needs nothing from elsewhere")
{
    const std::string html = page(small_job::make(small_job::careless).report);
    for (const char* outside : {"http://", "https://", "src=", "<link", "@import", "url("}) CHECK(count(html, outside) == 0);
}

TEST_CASE("beside every loading on the page stands what it is not")
{
    CHECK(loadings_alone("12 ug/ft2, and that is that", "ug/ft2", 300) == 1);
    for (const std::string& cards : {small_job::careful, small_job::careless}) {
        const std::string html = read_aloud(page(small_job::make(cards).report));
        CHECK(count(html, "ug/ft2") > 8);
        CHECK(loadings_alone(html, "ug/ft2", 300) == 0);
        CHECK(loadings_alone(html, "g/ft2", 300) == 0);
        CHECK(loadings_alone(html, "g/m2", 300) == 0);
    }
}

TEST_CASE("the points in the table add up to what the sheet says is lost")
{
    const auto made = small_job::make(small_job::careless);
    const std::string table = between(page(made.report), "Points wanted and points lost", "</table>");
    std::vector<double> points;
    const std::string cell = "<td class=\"right\">-";
    for (std::size_t at = table.find(cell); at != std::string::npos; at = table.find(cell, at + 1)) points.push_back(std::atof(table.c_str() + at + cell.size()));
    REQUIRE(points.size() >= 3);
    const double lost = points.back();
    points.pop_back();
    double all = 0.0;
    for (const double point : points) all += point;     // quarters are exact in binary
    CHECK(all == lost);
    CHECK(lost == static_cast<double>(made.sheet.lost.count) / 4.0);
    CHECK(points.size() == made.report.marks.size());
}

TEST_CASE("the page has what the reader needs, in the order of the debrief")
{
    const auto made = small_job::make(small_job::careless);
    const std::string html = page(made.report);
    std::size_t last = 0;
    for (const char* part : {"<h1>A small job</h1>", "NOT PASSED", ">Practise next<", ">Marking sheet<", ">Faults, one by one<", ">How lead got out<", ">Where lead dust lies at the end<",
                             ">What the crew breathed<", ">Floor maps<", ">The steps over the day<", ">How far to trust these figures<", ">Rules that were kept<", ">How to repeat this run<", ">Cautions<"}) {
        const std::size_t at = html.find(part);
        INFO(part);
        REQUIRE(at != std::string::npos);
        CHECK(at > last);
        last = at;
    }
    CHECK(count(html, "made up for a test, 2024") == 1);
    CHECK(count(html, to_hex(made.report.end_hash)) == 1);
    CHECK(count(html, "class=\"fault-card\"") == made.report.faults.size());
    CHECK(count(html, "<th scope=") + count(html, "<th class=\"right\" scope=") + count(html, "<th class=\"group\"") == count(html, "<th") - count(html, "<thead"));
    for (const std::string_view caution : cautions()) CHECK(count(html, text::escaped(caution)) == 1);
}

TEST_CASE("shares are told in words, and bags and sheeting only as possible")
{
    CHECK(share_level(0.0) == 0);
    CHECK(share_level(0.009) == 1);
    CHECK(share_level(0.01) == 2);
    CHECK(share_level(0.1) == 3);
    CHECK(share_level(0.3) == 4);
    CHECK(share_level(0.9) == 5);
    CHECK(told_share(PathwayLine{dust::Pathway::shoes, {}, 0.3}) == "much");
    CHECK(told_share(PathwayLine{dust::Pathway::bag, {}, 0.3}) == "much, possible only");
    CHECK(told_share(PathwayLine{dust::Pathway::bag, {}, 0.0}) == "none");
    CHECK(told_share(PathwayBand{dust::Pathway::shoes, {0.005, 0.3, 0.9, 20}, {}, 1}) == "much (trace to most)");
    CHECK(told_share(PathwayBand{dust::Pathway::shoes, {0.6, 0.8, 0.9, 20}, {}, 1}) == "most (steady)");
    CHECK(told_share(PathwayBand{dust::Pathway::bag, {0.005, 0.3, 0.9, 20}, {}, 0}) == "possible, up to most");
    CHECK(told_share(PathwayBand{dust::Pathway::bag, {0.0, 0.0, 0.0, 20}, {}, 0}) == "none");

    const std::string chart = pathway_chart(std::vector<PathwayLine>{{dust::Pathway::shoes, {}, 0.37}, {dust::Pathway::tools, {}, 0.0}}).html();
    CHECK(count(chart, "class=\"bar\"") == 1);
    CHECK(count(read_aloud(chart), "much") == 3);    // description, head, row
    CHECK(count(read_aloud(chart), "37") == 0);
}

namespace {

/// Middle of every fault sign of a timeline, from the numbers written on them.
std::vector<std::pair<double, double>> sign_places(const std::string& drawing)
{
    std::vector<std::pair<double, double>> places;
    const std::string group = "<g class=\"fault\">";
    for (std::size_t at = drawing.find(group); at != std::string::npos; at = drawing.find(group, at + 1)) {
        const std::size_t text = drawing.find("<text x=\"", at);
        const std::size_t y = drawing.find("y=\"", text + 9);
        places.emplace_back(std::atof(drawing.c_str() + text + 9), std::atof(drawing.c_str() + y + 3));
    }
    return places;
}

}

TEST_CASE("no fault hides another on the timeline, however many there are", "[property]")
{
    const auto made = small_job::make(small_job::careless);
    CHECK(rc::check([&] {
        Report report = made.report;
        const FaultLine pattern = report.faults.front();
        report.faults.clear();
        const int many = *rc::gen::inRange(0, 200);
        for (int i = 0; i < many; ++i) {
            report.faults.push_back(pattern);
            report.faults.back().number = i + 1;
            report.faults.back().steps = {*rc::gen::inRange(0, static_cast<int>(report.steps.size()))};
        }
        const std::string drawing = timeline(report).html();
        const auto places = sign_places(drawing);
        RC_ASSERT(places.size() == report.faults.size());
        for (std::size_t i = 0; i < places.size(); ++i) {
            RC_ASSERT(places[i].first > 10.0 && places[i].first < 750.0 && places[i].second > 10.0);
            for (std::size_t j = 0; j < i; ++j)
                RC_ASSERT(std::abs(places[i].first - places[j].first) > 21.9 || std::abs(places[i].second - places[j].second) > 21.9);
        }
    }));
}

TEST_CASE("steps that were refused say so on the page")
{
    const auto made = small_job::make(small_job::signs + small_job::shut + small_job::shut + R"({ do = "take-down-flap", by = ["ann"], opening = "door" },)");
    const std::string html = page(made.report);
    REQUIRE(made.report.steps.back().outcome == job::Outcome::refused);
    CHECK(count(html, text::escaped("refused: " + made.report.steps.back().reason.english())) == 1);
    CHECK(count(html, "card idle") >= 1);
}
