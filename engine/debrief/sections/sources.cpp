#include "debrief/sections/parts.hpp"

#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr std::size_t most_rows = 10, always_told = 3;
constexpr double trace = 0.01;      // told in words, all below are alike

/// Is a row of that rank worth its line?
bool is_told(double share, int rows_before)
{
    const auto before = static_cast<std::size_t>(rows_before);
    return share > 0.0 && before < most_rows && (before < always_told || share >= trace);
}

std::string step_told(const Report& report, int entry)
{
    const StepLine& step = report.steps.at(static_cast<std::size_t>(entry));
    return say_with("{}. {}", step.number, say(step.title));
}

/// Shares over the light runs of the plan, in words: "some (little to much)".
std::string band_told(const Report& report, const WayOfSource& way)
{
    if (!report.what_ifs || report.what_ifs->source_shares.empty()) return {};
    const auto found = std::find_if(report.what_ifs->source_shares.begin(), report.what_ifs->source_shares.end(),
                                    [&](const SourceBand& band) { return band.source == way.source && band.pathway == way.pathway; });
    if (found == report.what_ifs->source_shares.end()) return {};
    return told_share(PathwayBand{way.pathway, found->share, {}, 0});
}

Element by_card(const Report& report)
{
    Element list = table(say("What each card let loose, and where the lead of it was at the end"),
                         {say("Step that let it loose"), say("Held"), say("Left in the work area"), say("Got out of the work area")});
    list.with("class", "whole");
    Element body("tbody");
    const auto share = [](Amount part, Amount of) { return said_share(of.lead.count > 0 ? static_cast<double>(part.lead.count) / static_cast<double>(of.lead.count) : 0.0); };
    for (const SourceLine& line : report.trace.sources) {
        Element row("tr");
        row.add(piece("th", step_told(report, line.source)).with("scope", "row"));
        for (const Amount part : {line.contained, line.inside, line.outside}) row.add(piece("td", share(part, line.released)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

Element by_way(const Report& report)
{
    const std::vector<WayOfSource> ways = ways_of_sources(report.trace);
    const bool has_bands = report.what_ifs && !report.what_ifs->source_shares.empty();
    std::vector<std::string_view> heads{">", say("Step that let it loose"), say("Way out"), say("Share of what got out")};
    const std::string rank = ">" + std::string(say("Rank"));
    heads.front() = rank;
    if (has_bands) heads.push_back(say("Over the light runs"));
    Element list = table(say("From which card, by which way, largest first"), heads).with("class", "whole");
    Element body("tbody");
    int number = 0;
    for (const WayOfSource& way : ways) {
        if (!is_told(way.share, number)) break;
        Element row("tr");
        row.add(piece("td", std::to_string(++number), "right"));
        row.add(piece("th", step_told(report, way.source)).with("scope", "row"));
        row.add(piece("td", say(word_of(way.pathway))));
        row.add(piece("td", told_share(PathwayLine{way.pathway, way.amount, way.share})));
        if (has_bands) row.add(piece("td", band_told(report, way)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

Element by_step(const Report& report)
{
    const std::string rank = ">" + std::string(say("Rank"));
    Element list = table(say("During which step it crossed, largest first"), {rank, say("Step that let it loose"), say("Crossed during step"), say("Way out"), say("Share of what got out")});
    list.with("class", "whole");
    Element body("tbody");
    int number = 0;
    for (const TraceLine& line : report.trace.crossings) {
        if (line.pathway == dust::Pathway::recovered) continue;
        if (!is_told(line.share, number)) break;
        Element row("tr");
        row.add(piece("td", std::to_string(++number), "right"));
        row.add(piece("th", step_told(report, line.source)).with("scope", "row"));
        row.add(piece("td", step_told(report, line.step)));
        row.add(piece("td", say(word_of(line.pathway))));
        row.add(piece("td", told_share(PathwayLine{line.pathway, line.amount, line.share})));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

Element left_behind(const Report& report)
{
    Picograms all;
    for (const LeftLine& line : report.trace.left) all += line.amount.lead;
    const std::string rank = ">" + std::string(say("Rank"));
    Element list = table(say("What was left in the work area, by card and place, largest first"), {rank, say("Step that let it loose"), say("Where it lies"), say("Share of what was left")});
    list.with("class", "whole");
    Element body("tbody");
    int number = 0;
    for (const LeftLine& line : report.trace.left) {
        const double share = all.count > 0 ? static_cast<double>(line.amount.lead.count) / static_cast<double>(all.count) : 0.0;
        if (!is_told(share, number)) break;
        Element row("tr");
        row.add(piece("td", std::to_string(++number), "right"));
        row.add(piece("th", step_told(report, line.source)).with("scope", "row"));
        row.add(piece("td", as_sentence(called(line.place))));
        row.add(piece("td", said_share(share)));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element sources(const Report& report)
{
    Element section = titled(say("Which work the dust came from"));
    section.add(piece("p", say("Every picogram that got out or was left is traced to the card that let it loose, the step in which it crossed and the way. Where dust of several cards was mixed, each has its "
                               "part in proportion; the parts add up to the books exactly."), "small intro"));
    section.add(by_card(report));
    const bool is_out = std::any_of(report.trace.crossings.begin(), report.trace.crossings.end(), [](const TraceLine& line) { return line.share > 0.0; });
    if (is_out) section.add(by_way(report)).add(by_step(report));
    if (!report.trace.left.empty()) section.add(left_behind(report));
    section.add(piece("p", say("Rows below the third that are a trace only are left out."), "small"));
    return section;
}

}
