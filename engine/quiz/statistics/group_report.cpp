#include "quiz/statistics/group_report.hpp"

#include "core/insist.hpp"
#include "text/chart.hpp"
#include "text/language.hpp"
#include "text/page.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::quiz {

using text::Element;
using text::say;

namespace {

/// "7" or "60 to 70 %" or "4 to 8".
std::string name_of(const ScoreClass& scores, double most)
{
    if (scores.from == scores.to) return text::show_number(scores.from, 4);
    if (most == 1.0) return text::say_with("{} to {} %", text::show_number(100.0 * scores.from, 3), text::show_number(100.0 * scores.to, 3));
    return text::say_with("{} to {}", text::show_number(scores.from, 4), text::show_number(scores.to, 4));
}

/// A line of signs for each class, the largest as long as there is room.
std::string bars(const PaperStatistics& paper, std::size_t width)
{
    int largest = 1;
    for (const ScoreClass& scores : paper.classes) largest = std::max(largest, scores.people);
    const std::size_t room = std::min<std::size_t>(width - 30, 50);
    text::TextTable table{{{std::string(say("Points")), text::Align::right}, {std::string(say("People")), text::Align::right}, {""}}, {}};
    for (const ScoreClass& scores : paper.classes) {
        const bool is_small = static_cast<std::size_t>(largest) <= room;
        const auto people = static_cast<std::size_t>(scores.people);
        // One sign a person where they fit; otherwise scaled, and nobody vanishes.
        const std::size_t signs = is_small ? people : people * room / static_cast<std::size_t>(largest);
        table.rows.push_back({name_of(scores, paper.most), std::to_string(scores.people), std::string(people > 0 ? std::max<std::size_t>(signs, 1) : 0, '#')});
    }
    return text::lay_out(table, width);
}

Element chart(const PaperStatistics& paper)
{
    text::BarChart chart;
    chart.title = std::string(say("People by points"));
    chart.axis_title = std::string(say("people"));
    for (const ScoreClass& scores : paper.classes) {
        text::Bar bar;
        bar.label = name_of(scores, paper.most);
        bar.value = scores.people;
        bar.shown = std::to_string(scores.people);
        chart.bars.push_back(std::move(bar));
    }
    return text::bar_chart(chart);
}

std::string paragraphs(const std::vector<std::string>& lines, std::size_t width)
{
    std::string out;
    for (const std::string& line : lines) out += text::paragraph(line, width);
    return out;
}

std::string headed(std::string_view head, const std::string& body) { return body.empty() ? std::string() : fmt::format("\n{}\n\n{}", say(head), body); }

void add_lines(Element& to, const std::vector<std::string>& lines)
{
    for (const std::string& line : lines) to.add(Element("p").say(line));
}

}

GroupReport group_report(const AnswerTable& table, bool shows_early)
{
    return {table.title, table.questions, paper_statistics(table), question_statistics(table), shows_early};
}

std::string group_sheet(const GroupReport& report, std::size_t width)
{
    insist(width >= 60, "a report on a terminal needs 60 columns");
    std::string out = text::paragraph(report.title, width) + paragraphs(paper_lines(report), width);
    out += headed(text::to_say("What so few people cannot tell yet"), paragraphs(early_lines(report), width));
    out += headed(text::to_say("People by points"), bars(report.paper, width));
    out += headed(text::to_say("Questions"), text::lay_out(question_table(report), width));
    out += headed(text::to_say("Worth a look"), paragraphs(finding_lines(report), width));
    out += headed(text::to_say("Answers given"), text::lay_out(answers_table(report), width));
    return out + headed(text::to_say("How to read this"), paragraphs(legend_lines(report), width));
}

Element group_section(const GroupReport& report)
{
    Element section("section");
    add_lines(section, paper_lines(report));
    if (report.is_early()) {
        std::string all;
        for (const std::string& line : early_lines(report)) all += (all.empty() ? "" : " ") + line;
        section.add(text::box(text::Tone::caution, say("What so few people cannot tell yet"), all));
    }
    section.add(chart(report.paper));
    section.add(Element("h2").say(say("Questions"))).add(text::page_table(question_table(report)));
    if (const auto lines = finding_lines(report); !lines.empty()) {
        Element list("ul");
        for (const std::string& line : lines) list.add(Element("li").say(line));
        section.add(Element("h2").say(say("Worth a look"))).add(std::move(list));
    }
    section.add(Element("h2").say(say("Answers given"))).add(text::page_table(answers_table(report)));
    section.add(Element("h2").say(say("How to read this")));
    add_lines(section, legend_lines(report));
    return section;
}

std::string group_page(const GroupReport& report)
{
    Element content("main");
    content.add(Element("h1").say(report.title)).add(group_section(report));
    return text::make_page({report.title, std::string(text::code_of(text::spoken()))}, std::move(content));
}

}
