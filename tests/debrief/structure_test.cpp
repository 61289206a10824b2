#include "html_checks.hpp"
#include "small_study.hpp"

#include "debrief/page.hpp"
#include "debrief/side_page.hpp"
#include "text/language.hpp"

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
