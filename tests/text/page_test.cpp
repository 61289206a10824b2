#include "text/page.hpp"

#include "core/insist.hpp"
#include "text/chart.hpp"
#include "text/ramp.hpp"
#include "text/svg.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <limits>
#include <string>

using namespace flapdoor;
using namespace flapdoor::text;

namespace {

std::size_t count(const std::string& text, const std::string& what)
{
    std::size_t found = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + what.size())) ++found;
    return found;
}

BarChart pathways()
{
    return {"Where the dust went", "lead, ug", false, {{"return air", 40, "40 ug", Band{10, 80}, true}, {"shoes", 4, "4 ug", {}, false}, {"bags", 0, "0 ug", {}, false}},
            {{10, "level to compare"}}};
}

}

TEST_CASE("what a user wrote stays text on a page")
{
    CHECK(escaped("a < b & c > d \"e\" 'f'") == "a &lt; b &amp; c &gt; d &quot;e&quot; &#39;f&#39;");
    CHECK(escaped("x\x01\x7F\xFF y\n\tz") == "x\uFFFD\uFFFD\uFFFD y\n\tz");
    CHECK(Element("p").with("title", "\"><script>").say("<script>").html() == "<p title=\"&quot;&gt;&lt;script&gt;\">&lt;script&gt;</p>");

    CHECK(rc::check([](const std::string& text) {
        const std::string safe = escaped(text);
        RC_ASSERT(safe.find_first_of("<>\"'") == std::string::npos);
    }));
}

TEST_CASE("elements nest, containers stand on lines of their own, void ones have no end")
{
    Element list("ul");
    list.add(Element("li").say("one ").add(Element("b").say("bold")));
    list.add(Element("li").say("two").add(Element("br")).say("three"));
    CHECK(list.html() == "<ul>\n<li>one <b>bold</b></li>\n<li>two<br>three</li>\n</ul>");
    CHECK(Element("div").html() == "<div></div>");
    CHECK_THROWS_AS(Element("p>"), BrokenPromise);
    CHECK_THROWS_AS(Element("script"), BrokenPromise);
    CHECK_THROWS_AS(Element("p").with("on click", "x"), BrokenPromise);
    CHECK_THROWS_AS(Element("style").say("</style>").html(), BrokenPromise);
}

TEST_CASE("coordinates are short")
{
    CHECK(coordinate(1.0) == "1");
    CHECK(coordinate(1.005) == "1");
    CHECK(coordinate(2.5) == "2.5");
    CHECK(coordinate(100.0) == "100");
    CHECK(coordinate(-0.001) == "0");
    CHECK_THROWS_AS(coordinate(std::numeric_limits<double>::infinity()), BrokenPromise);
}

TEST_CASE("a page is one file that fetches nothing")
{
    Element content("main");
    content.add(Element("h1").say("Debrief <hall>"));
    content.add(box(Tone::caution, "Training model", "not a clearance prediction"));
    const std::string page = make_page({"Debrief <hall>", "es"}, content);
    CHECK(page.starts_with("<!DOCTYPE html>\n<html lang=\"es\">\n<head>\n<meta charset=\"utf-8\">\n"));
    CHECK(page.ends_with("</body>\n</html>\n"));
    CHECK(count(page, "<title>Debrief &lt;hall&gt;</title>") == 1);
    CHECK(count(page, "<span class=\"word\">! Training model</span> not a clearance prediction") == 1);
    CHECK(count(page, "http:") + count(page, "https:") + count(page, "<link") + count(page, "<script") + count(page, "url(") + count(page, "@import") == 0);
    CHECK(count(page, "default-src &#39;none&#39;") == 1);
    CHECK(count(page_style(), "@media print") == 1);
    for (const char* name : {"@paper", "@text", "@muted", "@line", "@faint", "@accent", "@caution"}) CHECK(count(page, name) == 0);
    CHECK(count(page, "#0F5A5E") >= 1);
}

TEST_CASE("a page table is the terminal table with rules")
{
    const TextTable table{{{"pathway", Align::left}, {"lead", Align::right}}, {{"return air", "12 ug"}, {"shoes"}}};
    CHECK(page_table(table, "Pathways").html() ==
          "<table>\n<caption>Pathways</caption>\n<thead>\n<tr>\n<th scope=\"col\">pathway</th>\n<th class=\"right\" scope=\"col\">lead</th>\n</tr>\n</thead>\n"
          "<tbody>\n<tr>\n<td>return air</td>\n<td class=\"right\">12 ug</td>\n</tr>\n<tr>\n<td>shoes</td>\n<td class=\"right\"></td>\n</tr>\n</tbody>\n</table>");
}

TEST_CASE("shapes are written with short coordinates")
{
    CHECK(svg::rect(10, 20, -5, 4).html() == R"(<rect x="5" y="20" width="5" height="4"></rect>)");
    CHECK(svg::line({0, 1}, {2.25, 3}).html() == R"(<line x1="0" y1="1" x2="2.25" y2="3"></line>)");
    CHECK(svg::polyline({{0, 1}, {2, 3}}).html() == R"(<polyline points="0,1 2,3" fill="none"></polyline>)");
    CHECK(svg::polygon({{0, 1}, {2, 3}}).html() == R"(<polygon points="0,1 2,3"></polygon>)");
    CHECK(svg::circle({1, 2}, 3).html() == R"(<circle cx="1" cy="2" r="3"></circle>)");
    CHECK(svg::path("M0 0L1 1").html() == R"(<path d="M0 0L1 1"></path>)");
    CHECK(svg::label({1, 2}, "a<b", svg::Anchor::end, 12).html() == R"(<text x="1" y="2" font-size="12" text-anchor="end">a&lt;b</text>)");
    CHECK(svg::drawing(10, 20, "T", "D").html() ==
          "<svg viewBox=\"0 0 10 20\" width=\"10\" role=\"img\" aria-label=\"T\">\n<title>T</title>\n<desc>D</desc>\n</svg>");
}

TEST_CASE("the width of text is told well enough to place it")
{
    CHECK(svg::text_width("") == 0.0);
    CHECK(svg::text_width("iii") < svg::text_width("mmm"));
    CHECK(svg::text_width("ab", 26) == Approx(2 * svg::text_width("ab", 13)));
    CHECK(svg::fitted("short", 100) == "short");
    const std::string cut = svg::fitted("a very long label that has no room", 80);
    CHECK(cut.ends_with("\u2026"));
    CHECK(svg::text_width(cut) <= 80);
}

TEST_CASE("axes end at round numbers around the data")
{
    CHECK(linear_axis(0, 40).ticks == std::vector<double>{0, 10, 20, 30, 40});
    CHECK(linear_axis(0, 47).most == 50);
    CHECK(linear_axis(0, 0.0031).ticks.size() == 5);
    CHECK(linear_axis(-3, 7).ticks == std::vector<double>{-4, -2, 0, 2, 4, 6, 8});
    CHECK(linear_axis(0, 0).ticks == std::vector<double>{0, 0.5, 1});
    CHECK(log_axis(3, 250).ticks == std::vector<double>{1, 10, 100, 1000});
    CHECK(log_axis(100, 100).ticks == std::vector<double>{100, 1000});
    CHECK(log_axis(0.02, 5).ticks == std::vector<double>{0.01, 0.1, 1, 10});
    CHECK(log_axis(0, 0).ticks == std::vector<double>{1, 10});
    CHECK(log_axis(1e-30, 1).ticks.size() == 13);
    CHECK(log_axis(1, 1000).share(10) == Approx(1.0 / 3));
    CHECK(log_axis(1, 1000).share(0) == 0.0);
    CHECK(linear_axis(0, 40).share(30) == 0.75);
    CHECK(linear_axis(0, 40).share(99) == 1.0);
    CHECK_THROWS_AS(linear_axis(0, std::numeric_limits<double>::infinity()), BrokenPromise);

    CHECK(rc::check([] {
        const double most = *rc::gen::inRange(1, 1'000'000) / 997.0;
        const int about = *rc::gen::inRange(2, 21);
        const Axis axis = linear_axis(0, most, about);
        RC_ASSERT(axis.most >= most * (1 - 1e-9));
        RC_ASSERT(static_cast<int>(axis.ticks.size()) <= about + 2);
        RC_ASSERT(axis.ticks.front() == axis.least);
        RC_ASSERT(axis.ticks.back() == axis.most);
    }));
}

TEST_CASE("a bar is as long as its value, and says it in words too")
{
    const std::string chart = bar_chart(pathways()).html();
    CHECK(count(chart, "<desc>lead, ug; return air: 40 ug; shoes: 4 ug; bags: 0 ug</desc>") == 1);
    CHECK(count(chart, "class=\"bar marked\"") == 1);
    CHECK(count(chart, "class=\"bar\"") == 2);
    CHECK(count(chart, "class=\"whisker\"") == 1);
    CHECK(count(chart, ">level to compare</text>") == 1);
    CHECK(count(chart, "width=\"0\" height=\"16\"") == 1);

    // Widths of the bars stand in the ratio of the values.
    const auto width_of = [&](const std::string& label) {
        const std::size_t title = chart.find("<title>" + label);
        const std::size_t at = chart.rfind("width=\"", title) + 7;
        return std::stod(chart.substr(at));
    };
    CHECK(width_of("return air") == Approx(10 * width_of("shoes")).epsilon(0.001));
}

TEST_CASE("a logarithmic chart says so and leaves zero without a bar")
{
    BarChart chart = pathways();
    chart.is_log = true;
    const std::string html = bar_chart(chart).html();
    CHECK(count(html, "each line ten times the one before") == 1);
    CHECK(count(html, "width=\"0\" height=\"16\"") == 1);
    CHECK(count(html, ">100</text>") == 1);
}

TEST_CASE("a chart refuses what cannot be drawn, and draws nothing at all")
{
    BarChart chart = pathways();
    chart.bars[0].value = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(bar_chart(chart), BrokenPromise);
    chart.bars[0].value = -1;
    CHECK_THROWS_AS(bar_chart(chart), BrokenPromise);
    CHECK(count(bar_chart(BarChart{"Nothing", "ug", false, {}, {}}).html(), "<rect") == 0);
}

TEST_CASE("the legend of a dust map runs over the ramp with the ticks of its axis")
{
    const std::string legend = dust_legend(log_axis(1, 1000), "lead on the floor, ug/ft2").html();
    CHECK(count(legend, "<rect") == 49);
    CHECK(count(legend, to_hex(dust_color(0.5 / 48))) == 1);
    for (const char* tick : {">1<", ">10<", ">100<", ">1000<", ">lead on the floor, ug/ft2<"}) CHECK(count(legend, tick) >= 1);
}
