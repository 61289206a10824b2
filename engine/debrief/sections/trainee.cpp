#include "debrief/sections/parts.hpp"

#include "debrief/fault_mark.hpp"
#include "debrief/floor_map.hpp"
#include "debrief/level.hpp"
#include "debrief/pathway_chart.hpp"
#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr std::size_t told_faults = 3;

Element head(const Report& report)
{
    Element header("header");
    header.add(piece("p", say("Your practice run"), "eyebrow"));
    header.add(Element("h1").say(say(report.scenario.title)));
    Element line = Element("p").with("class", "small run-line");
    line.say(say_with("Plan: {}. Seed {}. Site time {}. Rule book: {}.", say(report.plan), report.seed, text::show(report.outcome.took), say(report.sheet.book)));
    header.add(std::move(line));
    Element names = Element("p").with("class", "names");
    for (const std::string_view name : {say("Name"), say("Date")}) names.add(Element("span").say(name));
    return header.add(std::move(names));
}

Element verdict(const Report& report)
{
    Element result = Element("div").with("class", report.sheet.is_passed ? "result" : "result failed");
    result.add(piece("p", report.sheet.is_passed ? say("Passed as practice") : say("Not passed"), "verdict"));
    const std::size_t critical = report.sheet.critical.size();
    std::string text = say_with("{} of the points are left.", rules::percent_text(report.sheet.score)) + " ";
    text += critical > 0 ? text::say_number("{} critical rule was broken; one is enough to fail.", "{} critical rules were broken; one is enough to fail.", critical)
                         : std::string(say("No critical rule was broken."));
    return result.add(piece("p", text));
}

/// What a repair of the fault would have changed, in one sentence.
std::string effect(const Report& report, const FaultLine& fault)
{
    const WhatIf* what_if = report.what_ifs ? report.what_ifs->find(WhatIf::Kind::repaired, fault.rule.rule) : nullptr;
    if (what_if == nullptr) return fault.rule.harm.empty() ? std::string() : say_with("What goes wrong: {}", say(fault.rule.harm));
    const WhatIfLine line = what_if_line(report, *what_if);
    std::string text;
    const double out = harm_of(*what_if, Compared::outside);
    const double all = static_cast<double>(report.what_ifs->base.outside.lead.count);
    if (out > 0.0 && all > 0.0 && out / all >= 0.01) text = say_with("Done right, {} of the lead that got out would have stayed in.", text::show_percent(std::min(1.0, out / all)));
    else text = say("Done right, about as much lead would have got out in this run.");
    if (line.how_often.empty()) return text;
    text += " ";
    text += harmful_runs(*what_if) > 0 ? say_with("With other luck it does harm in {} runs.", line.how_often) : std::string(say("Other luck makes no difference."));
    return text;
}

/// The costliest faults: critical ones and those that let most out first.
std::vector<const FaultLine*> worst(const Report& report)
{
    std::vector<const FaultLine*> list;
    for (const Practice& practice : practise_next(report, told_faults))
        for (const FaultLine& fault : report.faults)
            if (fault.number == practice.fault) list.push_back(&fault);
    return list;
}

Element faults_told(const Report& report)
{
    Element block("section");
    block.add(Element("h2").say(say("What mattered most")));
    const std::vector<const FaultLine*> list = worst(report);
    if (list.empty()) return block.add(piece("p", say("No rule of the book was broken. Another run with another seed can still go differently for the dust.")));
    for (const FaultLine* fault : list) {
        Element card = Element("div").with("class", "told-fault");
        card.add(Element("h3").add(inline_fault_sign(*fault)).add(Element("span").say(as_sentence(std::string(say(fault->rule.says))))));
        card.add(Element("p").say(say(fault->rule.reason)));
        if (const std::string text = effect(report, *fault); !text.empty()) card.add(piece("p", text, "effect"));
        block.add(std::move(card));
    }
    const std::size_t rest = report.faults.size() - list.size();
    if (rest > 0) block.add(piece("p", text::say_number("{} more fault is on the instructor's sheet.", "{} more faults are on the instructor's sheet.", rest), "small"));
    return block;
}

Element where_it_went(const Report& report)
{
    Element block("section");
    block.add(Element("h2").say(say("Where the dust went")));
    Element columns = Element("div").with("class", "two");
    Element left("div");
    const Outcome& outcome = report.outcome;
    const auto share = [&](Amount part) { return said_share(outcome.released.lead.count > 0 ? static_cast<double>(part.lead.count) / static_cast<double>(outcome.released.lead.count) : 0.0); };
    Element list = table(say("Of the lead that the work set free"), {say("Where"), say("Share")});
    Element body("tbody");
    for (const auto& [where, part] : {std::pair{say("Held in bags, vacuum, cloths and water"), outcome.contained}, std::pair{say("Left in the work area"), outcome.inside}, std::pair{say("Got out of the work area"), outcome.outside}})
        body.add(Element("tr").add(piece("th", where).with("scope", "row")).add(piece("td", share(part))));
    left.add(list.add(std::move(body)));
    Element ways = table(say("How it got out, largest first"), {say("Way out"), say("Share")});
    Element rows("tbody");
    std::size_t told = 0;
    for (const PathwayLine& line : outcome.pathways) {
        if (!(line.share > 0.0) || told == 3) break;
        ++told;
        rows.add(Element("tr").add(piece("th", say(word_of(line.pathway))).with("scope", "row")).add(piece("td", told_share(line))));
    }
    if (told > 0) left.add(ways.add(std::move(rows)));
    else left.add(piece("p", say("In this run no lead left the work area.")));
    if (!report.maps.empty()) left.add(floor_map_key(320.0));
    columns.add(std::move(left));
    if (!report.maps.empty()) {
        const MapShot& shot = report.maps.back();
        Element figure("figure");
        figure.add(Element("figcaption").say(say_with("Lead on the floor at the end, {}", text::show_clock(shot.frame.at))));
        MapLook look;
        look.width = 300.0;
        look.has_key = false;
        figure.add(floor_map({report.scenario, report.rasters, report.work_room, shot.frame, std::string(say("Floor map at the end"))}, look));
        columns.add(std::move(figure));
    }
    return block.add(std::move(columns));
}

Element practise(const Report& report)
{
    Element block("section");
    block.add(Element("h2").say(say("Practise next")));
    Element list("ol");
    const std::vector<Practice> next = practise_next(report, 5);
    for (const Practice& practice : next) {
        std::string cards;
        for (const std::string& card : practice.cards) cards += (cards.empty() ? "" : ", ") + std::string(say(card));
        const std::string rule = as_sentence(std::string(say(practice.rule)));
        list.add(Element("li").say(cards.empty() ? say_with("{}.", rule) : say_with("{} (cards: {}).", rule, cards)));
    }
    if (next.empty()) return block.add(piece("p", say("The same job with another seed, or another drill.")));
    return block.add(std::move(list));
}

}

Element trainee_sheet(const Report& report)
{
    Element sheet = Element("div").with("class", "sheet");
    sheet.add(head(report)).add(verdict(report)).add(faults_told(report)).add(where_it_went(report)).add(practise(report));
    Element caution = Element("div").with("class", "box caution");
    caution.add(Element("p").add(piece("span", "! " + std::string(say("Caution")), "word")).say(" ").say(say("Lead dust that matters cannot be seen. On a real job, when containment fails: stop, close it, clean up what got out, and only then go on. "
                                                                                       "Training model, not a clearance prediction; single run, no band. This sheet certifies nobody and is no legal advice: ask the program that covers you.")));
    return sheet.add(std::move(caution));
}

}
