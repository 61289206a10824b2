#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"
#include "text/page.hpp"
#include "text/show.hpp"

namespace flapdoor::debrief::sections {

using text::Element;

namespace {

Element zones(const Report& report)
{
    Element list = table("Loose lead dust at the end, by place (chips apart)", {"Place", "Share", "Lead on the floor"});
    list.with("class", "loadings");
    Element body("tbody");
    for (const PlaceLine& line : report.places) {
        if (line.lead == Picograms{} && !line.floor) continue;
        Element row("tr");
        row.add(piece("th", line.is_work_room ? line.title + " (work room)" : line.title).with("scope", "row"));
        row.add(piece("td", share_in_words(line.share)));
        row.add(line.floor ? loading_cell(*line.floor) : piece("td", "no floor"));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

Element surfaces(const Report& report)
{
    Element list = table("Lead on other surfaces at the end (chips apart)", {"Surface", ">Area", "Lead"});
    list.with("class", "loadings");
    Element body("tbody");
    for (const SurfaceLine& line : report.outcome.surfaces) {
        if (line.role == site::SurfaceRole::floor) continue;
        Element row("tr");
        row.add(piece("th", as_sentence(line.name)).with("scope", "row"));
        row.add(piece("td", text::show_short(line.area), "right nowrap"));
        row.add(loading_cell(line.lead));
        body.add(std::move(row));
    }
    return list.add(std::move(body));
}

}

Element places(const Report& report)
{
    Element section = titled("Where lead dust lies at the end");
    section.add(text::box(text::Tone::caution, "Training model.",
                          "These figures belong to one run of a model with uncertain parameters. Only many runs give a level with its band, and no run gives "
                          "a clearance."));
    section.add(zones(report));
    section.add(surfaces(report));
    return section;
}

}
