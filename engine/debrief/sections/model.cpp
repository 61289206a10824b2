#include "debrief/sections/parts.hpp"

#include "debrief/influence.hpp"
#include "debrief/uncertainty.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

Element influence_table(const PlanBands& bands)
{
    Element list = table(say("What moves the result most, among what nobody knows well"), {say("Result"), say("Parameter"), say(">Rank correlation")});
    list.with("class", "whole");
    Element body("tbody");
    const auto add = [&](std::string_view result, const std::vector<Influence>& all) {
        const std::vector<Influence> strong = beyond_chance(all, bands.runs);
        for (const Influence& influence : strong) {
            Element row("tr");
            row.add(piece("td", result)).add(piece("td", say(uncertainties[influence.parameter].title)));
            body.add(row.add(piece("td", fmt::format("{:+.2f}", influence.correlation), "right")));
        }
        if (!strong.empty()) return;
        Element row("tr");
        body.add(row.add(piece("td", result)).add(piece("td", say("none stands out from chance in so few runs"))).add(piece("td", "", "right")));
    };
    add(say("lead on the work room's floor"), bands.on_floor);
    add(say("lead that got out"), bands.on_outside);
    return list.add(std::move(body));
}

}

Element model(const Report& report)
{
    Element section = titled(say("How far to trust these figures"));
    section.add(piece("p", report.bands ? say_with("A {}. {}", say(model_note), source_line(*report.bands)) : say_with("A {}. No study was made: every figure is a single run's.", say(model_note))));
    if (report.bands) section.add(piece("p", study_line(*report.bands)));
    if (report.bands && report.bands->runs >= fewest_for_a_band) {
        section.add(influence_table(*report.bands));
        section.add(piece("p",
                          say_with("+1: whenever the parameter is drawn higher, the result is higher; -1: lower; 0: no order. Only what goes beyond {} is told: by chance "
                                      "alone a parameter comes that far in one of a hundred studies of this size.",
                                      fmt::format("{:.2f}", beyond_chance(report.bands->runs))),
                          "small"));
    }
    section.add(piece("p", say("What the model leaves out:"), "intro"));
    Element list("ul");
    for (const std::string_view sentence : left_out()) list.add(Element("li").say(say(sentence)));
    return section.add(std::move(list));
}

}
