#include "debrief/sections/parts.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

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
    header.add(piece("p", say("Debrief of a practice run"), "eyebrow"));
    header.add(Element("h1").say(say(report.scenario.title)));
    Element block = Element("dl").with("class", "title-block");
    block.add(box_of(say("Work plan"), say(report.plan), "wide"));
    block.add(box_of(say("Seed"), std::to_string(report.seed)));
    block.add(box_of(say("Site time"), text::show(report.outcome.took)));
    block.add(box_of(say("Rule book"), say(report.sheet.book), "wide"));
    block.add(box_of(say("Edition of the book"), say(report.sheet.edition), "wide"));
    block.add(box_of(say("Building"), say_with("{}, built {}", say(report.scenario.building.title), report.scenario.building.built), "wide"));
    block.add(box_of(say("Steps"), std::to_string(report.steps.size())));
    block.add(box_of(say("End of the run"), text::show_clock(report.steps.empty() ? report.scenario.start : report.steps.back().end)));
    block.add(box_of(say("Name"), "", "wide to-fill"));
    block.add(box_of(say("Date"), "", "to-fill"));
    block.add(box_of(say("Instructor"), "", "to-fill"));
    header.add(std::move(block));
    header.add(piece("p", say(report.scenario.job), "small"));
    return header;
}

}
