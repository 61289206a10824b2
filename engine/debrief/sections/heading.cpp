#include "debrief/sections/parts.hpp"

#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;

namespace {

Element box_of(std::string_view name, std::string_view content, std::string_view class_name = {})
{
    Element box("div");
    if (!class_name.empty()) box.with("class", class_name);
    return box.add(Element("dt").say(name)).add(Element("dd").say(content));
}

}

Element heading(const Report& report)
{
    Element header("header");
    header.add(piece("p", "Debrief of a practice run", "eyebrow"));
    header.add(Element("h1").say(report.scenario.title));
    Element block = Element("dl").with("class", "title-block");
    block.add(box_of("Work plan", report.plan, "wide"));
    block.add(box_of("Seed", std::to_string(report.seed)));
    block.add(box_of("Site time", text::show(report.outcome.took)));
    block.add(box_of("Rule book", report.sheet.book, "wide"));
    block.add(box_of("Edition of the book", report.sheet.edition, "wide"));
    block.add(box_of("Building", fmt::format("{}, built {}", report.scenario.building.title, report.scenario.building.built), "wide"));
    block.add(box_of("Steps", std::to_string(report.steps.size())));
    block.add(box_of("End of the run", text::show_clock(report.steps.empty() ? report.scenario.start : report.steps.back().end)));
    block.add(box_of("Name", "", "wide to-fill"));
    block.add(box_of("Date", "", "to-fill"));
    block.add(box_of("Instructor", "", "to-fill"));
    header.add(std::move(block));
    header.add(piece("p", report.scenario.job, "small"));
    return header;
}

}
