#include "debrief/sections/parts.hpp"

#include "debrief/pathway_chart.hpp"
#include "debrief/wording.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;

namespace {

std::string share_told(Amount part, Amount of)
{
    const double share = of.lead > Picograms{} ? static_cast<double>(part.lead.count) / static_cast<double>(of.lead.count) : 0.0;
    return share_in_words(share);
}

Element balance(const Report& report)
{
    const Outcome& outcome = report.outcome;
    Element list = table(fmt::format("Lead that the work set free, and where it was at the end ({})", loading_note), {"Where", "Share", ">Lead"});
    Element body("tbody");
    const auto add = [&](std::string_view where, Amount amount, std::string_view share) {
        Element row("tr");
        row.add(piece("th", where).with("scope", "row")).add(piece("td", share)).add(piece("td", show_roughly(amount.lead), "right"));
        body.add(std::move(row));
    };
    add("Set free from the paint, chips included", outcome.released, "all");
    add("Held: in closed bags, vacuum, cloths and wash water", outcome.contained, share_told(outcome.contained, outcome.released));
    add("Left in the work area", outcome.inside, share_told(outcome.inside, outcome.released));
    add("Got out of the work area", outcome.outside, share_told(outcome.outside, outcome.released));
    return list.add(std::move(body));
}

Element ways(const Report& report)
{
    Element list = table("Ways out, largest first", {">Rank", "Way out", "Share", "How"});
    Element body("tbody");
    int rank = 0;
    for (const PathwayLine& line : report.outcome.pathways) {
        if (line.share <= 0.0) continue;
        Element row("tr");
        row.add(piece("td", std::to_string(++rank), "right"));
        row.add(piece("th", word_of(line.pathway)).with("scope", "row"));
        row.add(piece("td", told_share(line)));
        body.add(row.add(piece("td", how_it_leaves(line.pathway))));
    }
    return list.add(std::move(body));
}

}

Element pathways(const Report& report)
{
    Element section = titled("How lead got out");
    section.add(balance(report));
    if (!(report.outcome.outside.lead > Picograms{})) return section.add(piece("p", "In this run no lead left the work area."));
    Element figure("figure");
    figure.add(Element("figcaption").say("Share of the lead that left the work area, by pathway (this run)")).add(pathway_chart(report.outcome.pathways));
    section.add(std::move(figure));
    section.add(ways(report));
    section.add(piece("p",
                      "Shares are told in words, because one run is a story and no measurement: another seed can change their order. What came back "
                      "by the same way is taken off. Dashed bars: nobody has measured how much leaves with bags and sheeting.",
                      "small"));
    return section;
}

}
