#include "debrief/sections/parts.hpp"

#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;
using text::say_number;

namespace {

std::string share_told(Amount part, Amount of)
{
    const double share = of.lead > Picograms{} ? static_cast<double>(part.lead.count) / static_cast<double>(of.lead.count) : 0.0;
    return std::string(said_share(share));
}

Element balance(const Report& report)
{
    const Outcome& outcome = report.outcome;
    Element list = level_table(say("Lead that the work set free, and where it was at the end"), {say("Where"), say("Share")}, level_heads(report));
    Element body("tbody");
    const auto add = [&](std::string_view where, Amount amount, std::string_view share, Measured what) {
        Element row("tr");
        row.add(piece("th", where).with("scope", "row")).add(piece("td", share));
        add_level(row, report, level_of(amount.lead, report.bands ? report.bands->find(what) : nullptr));
        body.add(std::move(row));
    };
    add(say("Set free from the paint, chips included"), outcome.released, say("all"), Measured::released);
    add(say("Held: in closed bags, vacuum, cloths and wash water"), outcome.contained, share_told(outcome.contained, outcome.released), Measured::contained);
    add(say("Left in the work area"), outcome.inside, share_told(outcome.inside, outcome.released), Measured::inside);
    add(say("Got out of the work area"), outcome.outside, share_told(outcome.outside, outcome.released), Measured::outside);
    return list.add(std::move(body));
}

/// How it leaves, and below how sure that is.
Element how(dust::Pathway pathway)
{
    return Element("td").say(how_it_leaves(pathway)).add(Element("br")).add(piece("span", how_well_known(pathway), "sure"));
}

/// Ways out of one run.
Element ways(const Outcome& outcome)
{
    Element list = table(say("Ways out, largest first"), {say(">Rank"), say("Way out"), say("Share"), say("How, and how sure that is")});
    list.with("class", "ways");
    Element body("tbody");
    int rank = 0;
    for (const PathwayLine& line : outcome.pathways) {
        if (line.share <= 0.0) continue;
        Element row("tr");
        row.add(piece("td", std::to_string(++rank), "right"));
        row.add(piece("th", say(word_of(line.pathway))).with("scope", "row"));
        row.add(piece("td", told_share(line)));
        body.add(row.add(how(line.pathway)));
    }
    return list.add(std::move(body));
}

/// Ways out over many runs, beside this one.
Element ways(const Outcome& outcome, const PlanBands& bands)
{
    Element list = table(say_with("Ways out, largest first, by their median share over {}", say_number("{} run", "{} runs", bands.runs)), {say(">Rank"), say("Way out"), say("Share"), say("This run"), say("How, and how sure that is")});
    list.with("class", "ways whole");
    Element body("tbody");
    for (const PathwayBand& band : bands.pathways) {
        if (!(band.share.high > 0.0)) continue;
        Element row("tr");
        row.add(piece("td", band.rank > 0 ? std::to_string(band.rank) : "", "right"));
        row.add(piece("th", say(word_of(band.pathway))).with("scope", "row"));
        row.add(piece("td", told_share(band)));
        row.add(piece("td", told_share(line_of(outcome, band.pathway))));
        body.add(row.add(how(band.pathway)));
    }
    return list.add(std::move(body));
}

}

Element pathways(const Report& report)
{
    Element section = titled(say("How lead got out"));
    section.add(balance(report));
    const bool ever_got_out = report.outcome.outside.lead > Picograms{} || (report.bands && !report.bands->pathways.empty() && report.bands->pathways.front().share.high > 0.0);
    if (!ever_got_out) return section.add(piece("p", report.bands ? say("In none of the runs did lead leave the work area.") : say("In this run no lead left the work area.")));
    Element figure("figure");
    figure.add(Element("figcaption").say(report.bands ? say_with("Share of the lead that left the work area, by pathway: bars reach the median of {}, whiskers the band", say_number("{} run", "{} runs", report.bands->runs))
                                                      : std::string(say("Share of the lead that left the work area, by pathway (this run)"))));
    figure.add(report.bands ? pathway_chart(report.bands->pathways) : pathway_chart(report.outcome.pathways));
    section.add(std::move(figure));
    section.add(report.bands ? ways(report.outcome, *report.bands) : ways(report.outcome));
    section.add(piece("p",
                      say("Shares are told in words, because the figures behind them are no better than that. What came back by the same way is taken off. Dashed "
                      "bars, without a rank: nobody has measured how much leaves with bags and sheeting."),
                      "small"));
    return section;
}

}
