#include "html_checks.hpp"
#include "small_study.hpp"

#include "debrief/page.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/side_page.hpp"
#include "debrief/what_if_chart.hpp"
#include "debrief/what_if_line.hpp"
#include "text/language.hpp"
#include "text/svg.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;

namespace {

struct Speaking {
    explicit Speaking(text::Language language) { text::speak(language, FLAPDOOR_CATALOGS); }
    ~Speaking() { text::speak(text::Language::english); }
};

/// The careless small job with everything a page can show.
Report full_report()
{
    const Inputs careful = small_study::inputs(small_job::careful, "careful");
    const Inputs careless = small_study::inputs(small_job::careless, "careless");
    Report report = make_report(careless, carry_through(careless, 1, true));
    WhatIfOrder order;
    order.seeds = small_study::seeds(3);
    report.what_ifs = what_ifs(careless, &careful.plan, 1, order);
    report.bands = bands_of(small_study::made({careless}, 3), 0);
    return report;
}

}

TEST_CASE("the checks of a page's structure find what is wrong")
{
    CHECK(html_checks::headings_astray("<h1>a</h1><h2>b</h2><h3>c</h3><h2>d</h2>").empty());
    CHECK_FALSE(html_checks::headings_astray("<h1>a</h1><h3>c</h3>").empty());
    CHECK_FALSE(html_checks::headings_astray("<h2>a</h2>").empty());
    CHECK_FALSE(html_checks::headings_astray("<h1>a</h1><h1>b</h1>").empty());
    CHECK_FALSE(html_checks::heads_without_scope("<table><caption>x</caption><th>a</th></table>").empty());
    CHECK_FALSE(html_checks::heads_without_scope("<table><th scope=\"col\">a</th></table>").empty());
    CHECK_FALSE(html_checks::unnamed_drawing("<svg role=\"img\">").empty());
    CHECK_FALSE(html_checks::unnamed_drawing("<svg aria-label=\"a\">").empty());
    CHECK(html_checks::unnamed_drawing("<svg role=\"img\" aria-label=\"a\">").empty());
}

TEST_CASE("every page is well formed, its headings in order, its tables headed, its drawings named, in both languages")
{
    const auto language = GENERATE(text::Language::english, text::Language::spanish);
    const Speaking speaking(language);
    const Report report = full_report();
    const auto careful = small_job::make(small_job::careful);
    const auto careless = small_job::make(small_job::careless);
    for (const auto& [name, html] : {std::pair{"instructor", page(report)}, std::pair{"trainee", trainee_page(report)}, std::pair{"careful", page(careful.report)},
                                     std::pair{"careful trainee", trainee_page(careful.report)}, std::pair{"both", side_page(careful.report, careful.film, careless.report, careless.film)}}) {
        INFO(name);
        CHECK(html_checks::imbalance(html) == "");
        CHECK(html_checks::headings_astray(html) == "");
        CHECK(html_checks::heads_without_scope(html) == "");
        CHECK(html_checks::unnamed_drawing(html) == "");
        CHECK(html_checks::tags(html, "html").front().find(language == text::Language::english ? " lang=\"en\"" : " lang=\"es\"") != std::string::npos);
        for (const char* outside : {"http://", "https://", "src=", "<link", "@import", "url(", "<script"}) CHECK(small_job::count(html, outside) == 0);
    }
}

TEST_CASE("what a rule book calls its rules is for the screen, and each fault is told once")
{
    Report report = full_report();
    report.faults.back().kind = FaultKind::consequence;     // the small book has none
    const std::string html = page(report);
    CHECK(small_job::count(html, ">Consequences of the faults above, not weighed again<") == 1);
    CHECK(small_job::count(html, "class=\"id screen-only\"") == report.faults.size());
    CHECK(html.find(".screen-only, details.kept dl { display: none; }") > html.find("@media print"));
    for (const FaultLine& fault : report.faults) {
        INFO(fault.rule.rule);
        CHECK(small_job::count(html, ">" + fault.rule.rule + "<") == 1);
    }
    CHECK(small_job::count(html, "class=\"fault-card\"") == report.faults.size());
    std::size_t critical = 0;
    for (const FaultLine& fault : report.faults) critical += fault.rule.is_critical ? 1 : 0;
    const std::size_t broken = html.find("<ul class=\"broken\">");
    REQUIRE(broken != std::string::npos);
    CHECK(small_job::count(html.substr(broken, html.find("</ul>", broken) - broken), "<li>") == critical);
}

TEST_CASE("each mistake's what-if is told once, with figures of its own where it did harm in any run, else in one row")
{
    const Report report = full_report();
    const std::string html = page(report);
    const std::size_t from = html.find("What each mistake added"), to = html.find("The same mistakes, each alone");
    REQUIRE(from < to);
    const std::string told = html.substr(from, to - from);
    std::size_t harmless = 0, harmful = 0;
    for (const WhatIf& what_if : report.what_ifs->list) {
        if (what_if.kind != WhatIf::Kind::repaired) continue;
        const WhatIfLine line = what_if_line(report, what_if);
        const bool is_harmless = !did_harm(what_if) && harmful_runs(what_if) == 0;
        ++(is_harmless ? harmless : harmful);
        INFO(line.name);
        CHECK(small_job::count(told, "scope=\"row\">" + line.name + "<") == (is_harmless ? 1 : 0));
        CHECK(small_job::count(told, "scope=\"rowgroup\" rowspan=\"2\">" + line.name + "<") == (is_harmless ? 0 : 1));
    }
    CHECK(harmless > 0);
    CHECK(harmful > 0);
}

TEST_CASE("no words of a chart run out of it, in any language")
{
    const auto language = GENERATE(text::Language::english, text::Language::spanish);
    const Speaking speaking(language);
    const bool is_of_ways = GENERATE(false, true);
    const std::vector<PathwayBand> widest{{dust::Pathway::return_air, {0.3, 0.6, 0.9, 20}, {}, 1}, {dust::Pathway::seam, {0.0, 0.1, 0.9, 20}, {}, 2}, {dust::Pathway::sheeting_removal, {0.0, 0.1, 0.9, 20}, {}, 0}};
    const std::string chart = (is_of_ways ? pathway_chart(widest) : what_if_chart(full_report(), 15)).html();
    const double width = html_checks::number_of(html_checks::tags(chart, "svg").front(), "width");
    std::size_t words = 0;
    for (std::size_t at = chart.find("<text "); at != std::string::npos; at = chart.find("<text ", at + 1)) {
        const std::size_t end = chart.find('>', at);
        const std::string tag = chart.substr(at, end - at + 1), said = chart.substr(end + 1, chart.find('<', end) - end - 1);
        const double x = html_checks::number_of(tag, "x"), wide = text::svg::text_width(said, html_checks::number_of(tag, "font-size"));
        const double left = tag.find("\"end\"") != std::string::npos ? x - wide : tag.find("\"middle\"") != std::string::npos ? x - wide / 2.0 : x;
        INFO(said);
        CHECK(left >= 0.0);
        CHECK(left + wide <= width);
        ++words;
    }
    CHECK(words > 6);
}

TEST_CASE("a page in Spanish names its parts in Spanish to those who hear it")
{
    const Speaking speaking(text::Language::spanish);
    const std::string html = page(full_report());
    for (const char* english : {"aria-label=\"Result\"", "aria-label=\"kept\"", "aria-label=\"Marking sheet\""}) CHECK(small_job::count(html, english) == 0);
    CHECK(small_job::count(html, "aria-label=\"Resultado\"") == 1);
}

TEST_CASE("the instructor's page tells what each mistake did, the trainee's what mattered and what to practise")
{
    const Report report = full_report();
    const std::string instructor = page(report);
    for (const char* part : {">What each mistake did<", ">Near misses<", ">Which work the dust came from<", ">Practise next<", "The same mistakes, each alone in the careful plan",
                             "Faults that no change of cards repairs by itself"})
        CHECK(small_job::count(instructor, part) == 1);
    const std::string trainee = trainee_page(report);
    for (const char* part : {">Not passed<", ">What mattered most<", ">Where the dust went<", ">Practise next<", "not a clearance prediction", "certifies nobody"}) {
        INFO(part);
        CHECK(small_job::count(trainee, part) >= 1);
    }
    CHECK(small_job::count(trainee, "class=\"told-fault\"") <= 3);
    CHECK(small_job::count(trainee, "class=\"told-fault\"") >= 1);
}
